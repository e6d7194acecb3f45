import type { extendedForm } from '../../../../shared/records/forms/bowl';
import type { overriddenForm } from '../../../../shared/records/forms/course';
import type {
  discardedForm,
  lookForm,
  mixQuestions,
  outcomeForm,
  strandForm,
  takenOffForm,
} from '../../../../shared/records/forms/test';
import type { FormWords } from '../../formWords';
import { figures } from '../figures';
import { general } from '../general';
import { lift } from '../lift';
import { pullHint, stretchTaps } from './stretch';

const zone = { ask: 'Which hair?', options: general.zones } as const;

/** What a mix is, wherever it is asked. */
export const mixWords: FormWords<typeof mixQuestions> = {
  line: { ask: 'Line', hint: 'The maker’s product family, as on the shelf.' },
  batch: { ask: 'Batch', hint: 'From the label, if there is one.' },
  developerPercent: { ask: 'Developer bottle', hint: '3 % is 10 vol, 6 % is 20, 9 % is 30, 12 % is 40.' },
  ratio: { ask: 'Developer to 1 part', hint: '2 means 1 : 2.' },
  heat: {
    ask: 'Heat',
    hint: 'No dryer or lamp on lightener unless the maker says so.',
    options: { none: 'None', foil: 'Foil', dryHeat: 'Dry heat' },
  },
  minutes: { ask: 'Minutes on' },
};

const strand: FormWords<typeof strandForm> = {
  zone,
  place: {
    ask: 'Snipped where?',
    hint: 'Where she irons most, not the nape unless that is worst.',
    options: {
      hairline: 'Hairline',
      fringe: 'Fringe',
      crown: 'Crown',
      whereIroned: 'Where she irons',
      oldBleach: 'Old bleach band',
      nape: 'Nape',
    },
  },
  hairs: { ask: 'Hairs', hint: `${figures.fewestHairs} to ${figures.mostHairs}, and taped at one end.` },
  buildUp: { ask: 'Product build-up', options: { none: 'None', washedOff: 'Washed off' } },
  ...mixWords,
  makersLimitMin: { ask: 'Maker’s limit', hint: 'The longest the directions allow.' },
  lookEveryMin: {
    ask: 'Look every',
    hint: `The first look is ${figures.firstLook} after it goes on.`,
    options: { '3': '3 min', '5': '5 min' },
  },
  testG: { ask: 'Mix for the strand', hint: 'A few grams.' },
};

const look: Pick<FormWords<typeof lookForm>, 'level' | 'undertone' | 'feel'> = {
  level: { ask: 'Level now', hint: 'Wiped, blotted, on white.' },
  undertone: {
    ask: 'Which undertone?',
    options: { ...lift.undertones, asExpected: 'As expected', unknown: general.dontKnow },
  },
  feel: {
    ask: 'How does it feel?',
    options: { sound: 'Sound', rough: 'Rough', stretchy: 'Stretchy' },
  },
};

const takenOff: Pick<FormWords<typeof takenOffForm>, 'why'> = {
  why: {
    ask: 'Why now?',
    options: {
      timeIsUp: 'Time is up',
      levelReached: 'Level reached',
      looksWeak: 'It looks weak',
      clientLeaves: 'She has to leave',
    },
  },
};

const discarded: Pick<FormWords<typeof discardedForm>, 'why'> & { readonly by: { readonly ask: string } } = {
  by: { ask: 'Who puts it aside?' },
  why: {
    ask: 'Why does it not count?',
    options: {
      wrongTap: 'A wrong tap',
      lost: 'It was lost',
      clientLeft: 'The client left',
      wrongPlace: 'Snipped in the wrong place',
    },
  },
};

const extended: Pick<FormWords<typeof extendedForm>, 'minutes' | 'reason'> = {
  minutes: { ask: 'How many minutes more?' },
  reason: {
    ask: 'Why?',
    options: { liftIsSlow: 'Lift is slow', greyResists: 'Grey resists', makerSaysSo: 'Maker says so' },
  },
};

const outcome: FormWords<typeof outcomeForm> = {
  zone,
  fibre: {
    ask: 'Rinsed and wet between the fingers',
    short: 'Fibre',
    options: { sound: 'Sound', rough: 'Rough', gummy: 'Gummy', broken: 'Broken' },
  },
  stretch: {
    ask: 'Lightly pulled, let go',
    short: 'Wet stretch',
    hint: pullHint,
    options: stretchTaps,
  },
  wentPast30: {
    ask: `Did a light pull stretch it past ${figures.lightPull}?`,
    short: `Past ${figures.lightPull}`,
    options: { no: 'No', yes: 'Yes' },
  },
  level: { ask: 'Level reached' },
  evenness: {
    ask: 'How even is it?',
    short: 'Evenness',
    options: { even: 'Even', patchy: 'Patchy', banded: 'Banded' },
  },
};

/** A named person's reason to lift a judgement stop, here and at the decision. */
const override: Pick<FormWords<typeof overriddenForm>, 'code' | 'words'> & {
  readonly by: { readonly ask: string };
} = {
  by: { ask: 'Who signs?' },
  code: {
    ask: 'Reason',
    options: {
      knowsHerHair: 'I know her well',
      makerAllows: 'The maker allows it',
      seniorAgreed: 'A senior agreed',
      strandHeld: 'A strand held in this mix',
    },
  },
  words: { ask: 'In your own words', hint: 'Kept with your name, and told at the end of the day.' },
};

/** The questions around a strand, from its snip to its outcome. */
export const strandForms = { strand, look, takenOff, discarded, extended, outcome, override };
