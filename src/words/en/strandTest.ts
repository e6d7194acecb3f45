import type { RedFlag, Risk } from '../../../shared/judgement/risk';
import type { extendedForm } from '../../../shared/records/forms/bowl';
import type { overriddenForm } from '../../../shared/records/forms/course';
import type {
  discardedForm,
  lookForm,
  mixQuestions,
  outcomeForm,
  strandForm,
  takenOffForm,
} from '../../../shared/records/forms/test';
import type { Grade } from '../../../shared/records/gradeOutcome';
import type { FormWords } from '../formWords';
import { general } from './general';

const zone = { ask: 'Which hair?', options: general.zones } as const;

/** What a mix is, wherever it is asked. */
export const mixWords: FormWords<typeof mixQuestions> = {
  line: { ask: 'Line', hint: 'The maker’s product family, as on the shelf.' },
  batch: { ask: 'Batch', hint: 'From the label, if there is one.' },
  developerPercent: { ask: 'Developer bottle', hint: '3 % is 10 vol, 6 % is 20, 9 % is 30, 12 % is 40.' },
  ratio: { ask: 'Developer to 1 part of colour', hint: '2 means 1 : 2.' },
  heat: { ask: 'Heat', options: { none: 'None', foil: 'Foil', dryHeat: 'Dry heat' } },
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
  hairs: { ask: 'Hairs', hint: '20 to 50, and taped at one end.' },
  buildUp: { ask: 'Build-up', options: { none: 'None', washedOff: 'Washed off' } },
  ...mixWords,
  makersLimitMin: { ask: 'Maker’s limit', hint: 'The longest the directions allow.' },
  lookEveryMin: { ask: 'Look every', hint: 'First after 2 min.', options: { '3': '3 min', '5': '5 min' } },
  testG: { ask: 'Mix for the strand', hint: 'A few grams.' },
};

const look: Pick<FormWords<typeof lookForm>, 'level' | 'feel'> = {
  level: { ask: 'Level now', hint: 'Wiped, blotted, on white.' },
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
    ask: 'Why does it prove nothing?',
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
    options: { sound: 'Sound', rough: 'Rough', gummy: 'Gummy', broken: 'Broken' },
  },
  stretch: {
    ask: 'Lightly pulled, then let go',
    options: { springsBack: 'Springs back', staysLong: 'Stays long', snaps: 'Snaps' },
  },
  wentPast30: {
    ask: 'Ran on past 30 % on a light pull?',
    options: { no: 'No', yes: 'Yes' },
  },
  level: { ask: 'Level reached' },
  evenness: { ask: 'Colour', options: { even: 'Even', patchy: 'Patchy', banded: 'Banded' } },
};

/** A named person's reason to lift a judgement stop, here and at the decision. */
const override: Pick<FormWords<typeof overriddenForm>, 'code' | 'words'> & {
  readonly by: { readonly ask: string };
} = {
  by: { ask: 'Who takes it on?' },
  code: {
    ask: 'Reason',
    options: {
      knowsHerHair: 'I know her hair',
      makerAllows: 'The maker allows it',
      seniorAgreed: 'A senior agreed',
      clientInsists: 'The client insists',
    },
  },
  words: { ask: 'In your own words', hint: 'Kept with your name, and told at the end of the day.' },
};

const flags: Readonly<Record<RedFlag, string>> = {
  ironedWet: 'ironed wet, or she does not know',
  scorched: 'it smoked or smelt burnt',
  bleachedTwice: 'bleached twice or more, or she does not know',
  curlLost: 'the curl is gone at the ends',
  slowStretch: 'wet, it stays long or snaps',
  breakage: 'it breaks',
  veryHot: 'ironed above 400 °F',
  notKnown: 'something about it is not known',
};

const care: Readonly<Record<Risk, string>> = {
  low: 'Nothing speaks against this hair. One strand a zone.',
  raised: 'Suspect hair. Look every 3 min.',
  high: 'Suspect hair, more than one sign. Two strands at least, one from the worst place. Look every 3 min.',
};

/** Fibre as it was graded: the worst of what was seen, felt and pulled. */
export const gradeWords: Readonly<Record<Grade, string>> = {
  sound: 'sound',
  rough: 'rough',
  gummy: 'gummy',
  broken: 'broken',
};

export const strandTest = {
  forms: { strand, look, takenOff, discarded, extended, outcome, override },
  flags,
  care,
  grades: gradeWords,
  preparing: {
    title: 'Snip and test a strand',
    strands: 'Strands',
    strandsTested: (done: string, asked: string) => `${done} of ${asked} strands tested`,
    states: {
      none: 'not tested yet',
      running: 'in the mix',
      takenOff: 'off, outcome open',
      current: 'tested',
      stale: 'test again: the plan or the time has changed',
    },
    testedBy: (grade: string, level: string) => `${grade}, level ${level}`,
    howCareful: 'How careful',
    estimate: general.estimate,
    flagsTitle: 'Against this hair',
    noFlags: 'Nothing was told or felt.',
    test: (zoneName: string) => `Test ${zoneName}`,
    testAgain: (zoneName: string) => `Test ${zoneName} again`,
    keep: 'Keep what was tested',
    keepHint: 'Same plan, same hair, not too old: it still stands.',
    stepsOpen: 'Not every step has been asked. Go back on the strand.',
    stops: 'To be judged first',
    judge: 'Lift it, by name',
    liftedBy: (name: string, time: string) => `Lifted by ${name}, ${time}`,
    notReady: 'No strand yet',
  },
  glass: {
    title: 'First a cutting in a glass',
    why: 'Metal salts or unknown colour can heat, bubble or break hair in peroxide.',
    how: '20 parts 6 % peroxide to 1 part ammonia, 30 min. The maker’s method comes first.',
    caution: 'Off the head. Glass or plastic, never metal. Goggles on.',
    start: 'Start the glass, 30 min',
    running: 'Cutting in the glass',
    readNothing: 'Read: nothing',
    readReacted: 'It reacted',
    reactedHint: 'Heat, bubbles, a smell or a colour change: nothing goes on this client.',
    tooEarly: (left: string) => `“Nothing” can be read in ${left}. Did it react? Then say so at once.`,
    clear: 'Nothing in the glass. Keep the cutting 24 h: it can still break next day.',
  },
  start: {
    title: (zoneName: string) => `Strand from the ${zoneName}`,
    sameMix: (number: string) => `Same mix as strand ${number}`,
    limit: (minutes: string) => `maker’s limit ${minutes}`,
    anotherMix: 'Another mix',
    weigh: (colour: string, developer: string) => `Weigh ${colour} colour, ${developer} developer`,
    bottleAndBowl: (bottle: string, vol: string, bowl: string) =>
      `${bottle} bottle (${vol}), ${bowl} in the bowl`,
    gramsOpen: 'Developer and ratio first.',
    caution: 'Gloves on, a new pair. Plastic or glass bowl, never metal. Air at the mixing point.',
    begin: 'It is on: start the clock',
  },
  processing: {
    title: 'Strand in the mix',
    snippedAt: (place: string) => `snipped: ${place}`,
    look: 'Look at the strand',
    lookOf: (zoneName: string) => `Look: ${zoneName}`,
    takeOff: (zoneName: string) => `Take off: ${zoneName}`,
    takeOffNow: 'Take off now',
    broke: 'Breaking or mush',
    brokeHint: 'Ends this strand. Its mix is closed on this hair.',
    moreTime: 'More time',
    noMoreTime: 'The maker’s limit is reached.',
    atMost: (minutes: string) => `At most ${minutes} more, the maker’s limit.`,
    another: 'Start another strand',
    caution: 'Gloves on. Wipe, blot, look on white. A running test can be ended, never held.',
    lastLook: (level: string, feel: string) => `last look: level ${level}, ${feel}`,
    noLook: 'not looked at yet',
    limitNear: 'off',
    off: (name: string) => `${name} is off. Its outcome comes when the others are off too.`,
    lookTitle: 'Look at the strand',
    saveLook: 'Keep this look',
    extendTitle: 'More time in the mix',
    extend: 'Add the minutes',
    takeOffTitle: 'Take the strand off',
    discard: 'It proves nothing',
    discardTitle: 'Put the strand aside',
    discardDo: 'Put it aside, by name',
    discardHint: 'It stays in the record and counts for nothing. A new strand is needed.',
    otherLevel: 'Other level',
  },
  takenOff: {
    title: (name: string) => `Outcome: ${name}`,
    brokeInMix: 'It broke in the mix, and stays recorded as broken.',
    how: 'Rinse, blot, straighten the curl, pull lightly while wet. Then dry it and look on white.',
    record: 'Record the outcome',
    still: (count: string) => `${count} more to record`,
  },
};
