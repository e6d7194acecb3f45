import { LEGAL_CEILING_PERCENT } from '../../chemistry/peroxide';
import { undertones } from '../../chemistry/undertone';
import type { AnswersOf, Form } from '../form';
import { zones } from '../zones';

const zone = { kind: 'choice', options: zones } as const;

/**
 * What a mix is, as far as a permit binds to it: line, developer, ratio, heat, minutes.
 * Ratio is developer to one part of colour; equal parts where no other is given: common practice, no source.
 * Developer ceiling: published, Reg. (EC) 1223/2009 Annex III entry 12. Other ranges: ASSUMED, wide enough that only a
 * slip of the finger lies outside.
 */
export const mixQuestions = {
  line: { kind: 'text', maxLength: 40 },
  batch: { kind: 'text', maxLength: 20, or: '' },
  developerPercent: {
    kind: 'number',
    field: { quantity: 'percent', min: 0.5, max: LEGAL_CEILING_PERCENT },
  },
  ratio: { kind: 'number', field: { quantity: 'parts', min: 0.5, max: 5 }, or: 1 },
  heat: { kind: 'choice', options: ['none', 'foil', 'dryHeat'], or: 'none' },
  minutes: { kind: 'number', field: { quantity: 'minutes', min: 1, max: 60, step: 1 } },
} as const satisfies Form;

/**
 * From where was the strand snipped, and what goes on it?
 * 20–50 hairs, a look every 3 or 5 minutes, 6 g: common practice, no source. Grams end at ASSUMED_TEST_MAX_G
 * (shared/judgement/permit.ts). Other ranges: ASSUMED; the maker's own limit is asked.
 */
export const strandForm = {
  zone,
  place: { kind: 'choice', options: ['hairline', 'fringe', 'crown', 'whereIroned', 'oldBleach', 'nape'] },
  hairs: { kind: 'number', field: { quantity: 'count', min: 20, max: 50, step: 1 }, or: 30 },
  buildUp: { kind: 'choice', options: ['none', 'washedOff'] },
  ...mixQuestions,
  makersLimitMin: { kind: 'number', field: { quantity: 'minutes', min: 1, max: 90, step: 1 } },
  lookEveryMin: { kind: 'choice', options: ['3', '5'], or: '5' },
  testG: { kind: 'number', field: { quantity: 'mass', min: 2, max: 20 }, or: 6, more: true },
} as const satisfies Form;

const ofStrand = { question: 'of', is: ['strand'] } as const;
const ofHead = { question: 'of', is: ['head'] } as const;

/**
 * What does the look show? Wiped, blotted, on white; on a head, first of all whether it stings, then whether the hair holds.
 * Levels from 1 to 10 are the trade's depths (from memory: cosmetology textbooks), told to half a level: common
 * practice, no source. The undertone is the one that was named; `asExpected` where it stood beside the level and nobody
 * named another.
 */
export const lookForm = {
  of: { kind: 'choice', options: ['strand', 'head'] },
  zone,
  level: {
    kind: 'number',
    field: { quantity: 'level', min: 1, max: 10, step: 0.5 },
    unknown: true,
    when: ofStrand,
  },
  undertone: {
    kind: 'choice',
    options: [...undertones, 'asExpected', 'unknown'],
    or: 'unknown',
    when: ofStrand,
    addedIn: 3,
  },
  feel: { kind: 'choice', options: ['sound', 'rough', 'stretchy'], when: ofStrand },
  stinging: { kind: 'choice', options: ['no', 'yes'], when: ofHead },
  hair: {
    kind: 'choice',
    options: ['sound', 'stretchy', 'breaking', 'notSaid'],
    or: 'notSaid',
    when: ofHead,
    addedIn: 5,
  },
} as const satisfies Form;

/** How did the strand come off? That its time is up goes without saying only once its clock is over. */
export const takenOffForm = {
  zone,
  why: { kind: 'choice', options: ['timeIsUp', 'levelReached', 'looksWeak', 'clientLeaves'], or: 'timeIsUp' },
} as const satisfies Form;

/** Why does this strand prove nothing? One that broke, weakened or was recorded as weak cannot be put aside. */
export const discardedForm = {
  zone,
  why: { kind: 'choice', options: ['wrongTap', 'lost', 'clientLeft', 'wrongPlace'] },
} as const satisfies Form;

/** A strand that is broken shows neither a level nor how even it came out. */
const hasHeld = { question: 'fibre', is: ['sound', 'rough', 'gummy'] } as const;

/**
 * What did the strand say? Levels as in a look. Each answer decides what may go on the head: none has a default.
 * Stretch after a light pull to 20–30 %: see ASSUMED_LIGHT_PULL_LIMIT_PERCENT in shared/hair/stretch.ts.
 */
export const outcomeForm = {
  zone,
  fibre: { kind: 'choice', options: ['sound', 'rough', 'gummy', 'broken'] },
  stretch: { kind: 'choice', options: ['springsBack', 'staysLong', 'snaps'] },
  wentPast30: { kind: 'choice', options: ['no', 'yes'] },
  level: { kind: 'number', field: { quantity: 'level', min: 1, max: 10, step: 0.5 }, when: hasHeld },
  evenness: { kind: 'choice', options: ['even', 'patchy', 'banded'], when: hasHeld },
} as const satisfies Form;

/** What did the incompatibility test show after its time? 30 minutes: see INCOMPATIBILITY_MS. */
export const incompatibilityForm = {
  seen: { kind: 'choice', options: ['nothing', 'reacted'], absolute: ['reacted'] },
} as const satisfies Form;

/**
 * When was the skin test put on, and what was seen when it was read? Of which test of the ticket: the station says so.
 * A reaction is kept before anybody asks how it was done. At most about a hundred years older: ASSUMED, as for a clock.
 */
export const skinTestForm = {
  method: { kind: 'choice', options: ['makersMethod', 'openApplication', 'unknown'], or: 'unknown' },
  site: { kind: 'choice', options: ['behindEar', 'innerElbow', 'forearm', 'unknown'], or: 'unknown' },
  putOnAtMs: { kind: 'time', tense: 'past' },
  seen: { kind: 'choice', options: ['notReadYet', 'nothing', 'reaction'], absolute: ['reaction'] },
  /** The product line that was tested; left out where nobody said it. */
  line: { kind: 'text', maxLength: 40, stamped: true },
  skinTestId: { kind: 'text', maxLength: 32, stamped: true },
  readAtMs: { kind: 'time', tense: 'past', stamped: true },
  olderByMs: { kind: 'number', field: { quantity: 'count', min: 0, max: 3.2e12, step: 1 }, stamped: true },
  /**
   * When it came in here, where it was put on at another station, by this tablet's clock; left out where that bears on
   * nothing. In ms since 1970-01-01 UTC. Until the end of 2099: ASSUMED, no tablet of today lasts longer.
   */
  cameAtMs: {
    kind: 'number',
    field: { quantity: 'count', min: 0, max: 4_102_444_799_999, step: 1 },
    stamped: true,
    addedIn: 6,
  },
} as const satisfies Form;

export type MixAnswers = AnswersOf<typeof mixQuestions>;
export type StrandAnswers = AnswersOf<typeof strandForm>;
export type LookAnswers = AnswersOf<typeof lookForm>;
export type OutcomeAnswers = AnswersOf<typeof outcomeForm>;
export type SkinTestAnswers = AnswersOf<typeof skinTestForm>;
