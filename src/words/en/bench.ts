import type { BenchKind, BenchStage } from '../../../shared/hair/benchTrial';
import type {
  BenchHair,
  benchTakenBackForm,
  CurlAnswer,
  PiecesAnswer,
} from '../../../shared/records/forms/bench';
import type { AskWords, FormWords } from '../formWords';
import { correctionWords } from './forms/correction';

const kinds: Readonly<Record<BenchKind, string>> = { boilSet: 'Boil set', dryWet: 'Dry against wet' };

const hair: Readonly<Record<BenchHair, string>> = {
  untouched: 'untouched',
  coloured: 'coloured',
  bleached: 'bleached',
  unknown: 'not known',
};

const stages: Readonly<Record<BenchStage, string>> = {
  boiling: 'In boiling water',
  boiled: 'Take it out now',
  drying: 'Dries on its rod',
  cooling: 'Cools',
  readable: 'Read it now',
  late: 'Read it: late',
  read: 'Read',
};

const curl: Readonly<Record<CurlAnswer, string>> = {
  stays: 'Stays curled',
  partly: 'Partly',
  fellOut: 'Fell out',
};

const pulled: Readonly<Record<PiecesAnswer['dryPiece'], string>> = {
  springsBack: 'Springs back',
  slow: 'Slow, stays long',
  snaps: 'Snaps',
};

const takenBackForm: FormWords<typeof benchTakenBackForm> & { readonly by: AskWords } = {
  by: { ask: 'Who says so?', short: 'Who' },
  what: {
    ask: 'What was wrong?',
    short: 'Wrong was',
    options: { reading: 'The reading: it is read again', trial: 'The whole trial' },
  },
  code: {
    ask: correctionWords.code.ask,
    short: 'Why',
    options: {
      wrongTap: correctionWords.code.options.wrongTap,
      misheard: correctionWords.code.options.misheard,
      hasChanged: 'It was broken off',
    },
  },
  words: { ...correctionWords.words, short: 'In words' },
};

/** Trials on cut hair, to see what boiling water and a hot iron do. */
export const bench = {
  title: 'Bench trials',
  kicker: 'On cut hair. Never on a head.',
  kickerPractice: 'Practice: its clock may run faster than water boils, so put it at 1×. Never on a head.',
  way: 'Bench trials',
  wayDue: (count: string) => `Bench trials · ${count} due`,
  none: 'No trial yet.',
  noneHint: 'Start one on a cut piece of hair: it stands here, with who saw what.',
  startOne: 'Start a trial',
  startTitle: 'Which trial?',
  start: 'Start now',
  page: (page: string, pages: string) => `Page ${page} of ${pages}`,
  warmth: 'Warmth trial of a spray',
  kinds,
  asksKind: 'What is tried',
  asksHair: 'The cut hair is',
  hair,
  chooseFirst: 'Choose the trial and the hair, then what it needs stands here.',
  rulesTitle: 'Before you start',
  /** `minutes`, `from`, `to`: in boiling water, then dry. */
  rules: {
    boilSet: (minutes: string, from: string, to: string): readonly string[] => [
      `A cut strand on a rod goes into boiling water for ${minutes}, then dries on its rod for ${from} to ${to}.`,
      'Lid on, tongs, gloves that keep heat out. Steam burns: open the lid away from you.',
      'Nobody carries boiling water, and nobody leaves it. The station calls softly at the end: stay beside it.',
    ],
    dryWet: (minutes: string): readonly string[] => [
      'Two pieces of the same cut hair: one completely dry, one wet. One pass each, your own iron, one setting.',
      'Hold each with a clip, never in the hand. Wet hair under a plate steams: steam burns.',
      `Start when both are pressed. After ${minutes} wet both and pull them lightly.`,
    ],
  } satisfies Readonly<Record<BenchKind, (...times: string[]) => readonly string[]>>,
  marks: {
    boilSet: 'Half an hour, one to two days: common practice, no source.',
    dryWet: 'The time to cool is our own choice: longer is fine.',
  } satisfies Readonly<Record<BenchKind, string>>,
  hours: (count: string) => `${count}\u00a0h`,
  stages,
  until: (when: string) => `until ${when}`,
  from: (when: string) => `from ${when}`,
  since: (when: string) => `since ${when}`,
  besideIt: 'Nobody leaves it. Lid on, tongs, and nobody carries the water. Steam burns.',
  lookNow: {
    boilSet: 'Off its rod: does the curl stay?',
    dryWet: 'Both wetted and pulled lightly: how does each come back?',
  } satisfies Readonly<Record<BenchKind, string>>,
  curl,
  pulled,
  dryPiece: 'Pressed dry',
  wetPiece: 'Pressed wet',
  takeOut: 'It is out, on its rod',
  keep: 'Keep it',
  facts: {
    started: 'Started',
    hair: 'Hair',
    out: 'Out of the water',
    seen: 'Seen',
    takenBack: 'Reading taken back',
  },
  by: (when: string, by: string) => `${when}, by ${by}`,
  seen: (what: string, when: string, by: string) => `${what} (${when}, by ${by})`,
  takenBackBy: (when: string, by: string, why: string) => `${when}, by ${by}: ${why}`,
  both: (dry: string, wet: string) => `dry: ${dry}; wet: ${wet}`,
  tells: {
    boilSet:
      'A curl that stays was set for good by boiling water. Under an iron water boils too, when hair is wet.',
    dryWet: 'One piece is no proof. What it shows is this hair, this iron, this setting.',
  } satisfies Readonly<Record<BenchKind, string>>,
  takeBack: 'Noted wrongly',
  takeBackTitle: 'Noted wrongly?',
  holdToTakeBack: 'Take it back',
  takeBackLead: 'It stays in the log of this trial.',
  leaveIt: 'Leave it',
  takenBackForm,
};
