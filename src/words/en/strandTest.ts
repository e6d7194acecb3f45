import type { RedFlag, Risk } from '../../../shared/judgement/risk';
import type { Grade } from '../../../shared/records/gradeOutcome';
import { figures } from './figures';
import { strandForms } from './forms/strand';
import { general } from './general';
import { lift } from './lift';

const flags: Readonly<Record<RedFlag, string>> = {
  ironedWet: 'ironed wet, or she does not know',
  scorched: 'it smoked or smelt burnt',
  bleachedTwice: 'bleached twice or more, or she does not know',
  curlLost: 'the curl is gone at the ends',
  slowStretch: 'wet, it stays long or snaps',
  breakage: 'it breaks',
  veryHot: 'ironed so hot that the cortex softens',
  notKnown: 'something about it is not known',
};

/** The same where only the first of many are named. */
const flagsShort: Readonly<Record<RedFlag, string>> = {
  ironedWet: 'ironed wet',
  scorched: 'smelt burnt',
  bleachedTwice: 'bleached twice',
  curlLost: 'curl gone',
  slowStretch: 'stays long wet',
  breakage: 'it breaks',
  veryHot: 'ironed very hot',
  notKnown: 'something not known',
};

/** What the strand has to go through, by what she wants. */
const kinds = {
  full: 'Full strand: the whole time meant for the head.',
  short: 'Short strand: colour is only deposited, so the product’s own time is enough.',
} as const;

const care: Readonly<Record<Risk, string>> = {
  low: 'Nothing told or felt makes it suspect. One strand a zone decides.',
  raised: 'Look every 3 min.',
  high: 'Two strands, one from the worst place. Look every 3 min.',
};

/** A level that was just tapped, beside the last one seen and the one she wants. Never a refusal. */
const levelHeard = {
  darker: {
    look: (last: string) => `Darker than at the last look (${last}). Kept as you saw it.`,
    start: (last: string) => `Darker than before it went on (${last}). Kept as you saw it.`,
  },
  farLighter: {
    look: (last: string, by: string) =>
      `${by} levels lighter than at the last look (${last}). Kept as you saw it.`,
    start: (last: string, by: string) =>
      `${by} levels lighter than before it went on (${last}). Kept as you saw it.`,
  },
  belowWanted: (by: string, isMany: boolean, wanted: string) =>
    `${by} ${isMany ? 'levels' : 'level'} below what she wants (${wanted}), in this mix.`,
} as const;

/** A strand that came off before its time. Not "short strand": that is the kind for colour that only deposits. */
const shortTime = {
  ofPlanned: (on: string, planned: string) => `${on} of ${planned}`,
  short: (ofPlanned: string) => `Short of its time: ${ofPlanned}.`,
  /** It was taken off because it was light enough: nobody was in a hurry. */
  levelReached: (ofPlanned: string) => `Level reached after ${ofPlanned}.`,
  noFullStrand: (minutes: string) => `No full strand: proven for ${minutes} only.`,
  proves: (minutes: string) => `Proven for ${minutes} only.`,
  provesNothing: 'On for less than a minute, it proves no time on the head.',
} as const;

/** Fibre as it was graded: the worst of what was seen, felt and pulled. */
export const gradeWords: Readonly<Record<Grade, string>> = {
  sound: 'sound',
  rough: 'rough',
  gummy: 'gummy',
  broken: 'broken',
};

export const strandTest = {
  forms: strandForms,
  lift,
  flags,
  flagsShort,
  /** Signs of suspect hair beyond the first ones. */
  moreFlags: (count: string) => `and ${count} more`,
  allFlags: 'What makes it suspect',
  care,
  kinds,
  levelHeard,
  shortTime,
  grades: gradeWords,
  preparing: {
    title: 'Snip and test a strand',
    strandsTested: (done: string, asked: string) => `${done} of ${asked} strands tested`,
    states: {
      none: 'not tested yet',
      running: 'in the mix',
      takenOff: 'off, outcome still to record',
      current: 'tested',
      stale: 'test again: the plan has changed, or it is too old',
    },
    testedBy: (grade: string, level: string | null) => (level === null ? grade : `${grade}, level ${level}`),
    shortBy: (ofPlanned: string) => `short of its time: ${ofPlanned}`,
    estimate: general.estimate,
    test: (zoneName: string) => `Test ${zoneName}`,
    another: (zone: string, place: string) =>
      `One more strand of the ${zone}, from ${place}: not tested yet.`,
    testAgain: (zoneName: string) => `Test ${zoneName} again`,
    keep: 'Keep what was tested',
    keepHint: 'Same plan, same hair, not too old: it still stands.',
    keepFailed: 'Same plan, and a strand gummed or broke: another mix, or back to the decision.',
    stepsOpen: 'Something has not been asked yet. Go back to it: “More for this client”.',
    stops: 'To be judged first',
    judge: 'Sign and go on',
    moreToJudge: (count: string) => `And ${count} more to judge after it.`,
    liftedBy: (name: string, time: string) => `Signed by ${name}, ${time}`,
  },
  glass: {
    title: 'First a cutting in a glass',
    why: 'Metal salts or unknown colour can heat, bubble or break hair in peroxide.',
    how: `20 parts 6 % peroxide to 1 part ammonia, ${figures.glass}. The maker’s method comes first.`,
    start: `Start the glass, ${figures.glass}`,
    readNothing: 'Nothing happened',
    readReacted: 'It reacted',
    reactedHint: 'Heat, bubbles, a smell or a colour change: nothing goes on this client.',
    tooEarly: (left: string) =>
      `Too early to say “nothing”: ${left} to go. Did it react? Then say so at once.`,
    clear: `Nothing in the glass. Keep the cutting ${figures.cuttingHours} h: it can still break next day.`,
    late: 'The cutting reacted …',
    lateTitle: 'The cutting reacts, or it broke',
  },
  start: {
    title: (zoneName: string) => `Strand from the ${zoneName}`,
    sameMix: { strand: 'Mix as the last strand:', lastTime: 'Mix as last time:' },
    ready: 'Weigh it, put it on, start the clock.',
    summary: 'The mix',
    anotherMix: 'Another mix',
    weigh: (grams: string, stuff: 'colour' | 'lightener', developer: string) =>
      `Weigh ${grams} ${stuff}, ${developer} developer`,
    bottleAndBowl: (bottle: string, bowl: string) => `${bottle}, ${bowl} in the bowl`,
    gramsOpen: 'Developer and ratio first.',
    begin: 'It is on: start the clock',
  },
  processing: {
    title: 'Strand in the mix',
    snippedAt: (place: string) => `snipped: ${place}`,
    lookOf: (zoneName: string) => `Look: ${zoneName}`,
    takeOff: (zoneName: string) => `Take off: ${zoneName}`,
    takeOffNow: (zoneName: string) => `Take off now: ${zoneName}`,
    broke: (zoneName: string) => `Breaking or mush: ${zoneName}`,
    moreTime: 'More time',
    atMost: (minutes: string) => `At most ${minutes} more, the maker’s limit.`,
    another: 'Start another strand',
    levels: 'Levels seen',
    target: (level: string) => `wanted ${level}`,
    levelAfter: (level: string, minutes: string) => `level ${level} after ${minutes}`,
    stretchy: 'It was stretchy at a look. Take it off now. It counts as rough at best.',
    lastLook: (level: string, undertone: string, feel: string) =>
      `last look: ${[`level ${level}`, undertone, feel].filter((each) => each !== '').join(', ')}`,
    noLook: 'not looked at yet',
    off: 'is off: record its outcome',
    otherLevel: 'Another level',
    levelIs: (level: string) => `Level ${level}`,
    extendTitle: 'More time in the mix',
    extend: 'Add the minutes',
    takeOffTitle: 'Off before its time: why?',
    discard: 'Put strand aside',
    discardTitle: 'Put the strand aside',
    discardDo: 'Sign and put it aside',
    discardHint: 'It stays in the record and counts for nothing. A new strand is needed.',
  },
  /** The skin test, as far as it bears on what is tested here. */
  skinTest: {
    missing: 'No skin test yet: nothing goes on the head, good strand or not.',
    lapsed: 'Skin test too old: nothing goes on the head, good strand or not.',
    waiting: (readable: string) => `Skin test to be read from ${readable}: nothing on the head before.`,
    toRead: 'Skin test to be read now: nothing on the head before.',
  },
  /** A strand that broke in the mix: a stop for this mix on this hair. */
  broken: {
    row: (minutes: string) => `BROKE after ${minutes}. This mix is closed on them. Record it.`,
    what: (zoneName: string, minutes: string) => `The ${zoneName} broke after ${minutes}.`,
    closes: (zoneName: string) => `Closed on the ${zoneName}, and anything as strong:`,
    keep: 'It stays recorded as broken, and nobody can lift that. Keep the strand, to show her.',
    record: 'Record: broken',
  },
  takenOff: {
    title: (name: string) => `Outcome: ${name}`,
    summary: 'All said',
    allSaid: 'All said. Record it, and it counts.',
    /** Where looks or the pull showed worse than the fibre that was tapped. */
    countsAs: (grade: string) => `All said. It counts as ${grade}. Record it.`,
    signedAs: (name: string) => `Recorded by ${name}.`,
    record: 'Record the outcome',
    still: (count: string) => `${count} more to record`,
  },
};
