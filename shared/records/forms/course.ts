import { decisions } from '../../judgement/decisions';
import { ruleIds } from '../../judgement/rules';
import type { Form } from '../form';
import { askSteps, backSteps, correctables } from '../steps';
import { zones } from '../zones';

/**
 * Whose strand is it, and at which chair?
 * Ranges and lengths of texts in this file: ASSUMED, wide enough that only a slip of the finger lies outside.
 */
export const openedForm = {
  /** Initials, a ticket, or a code the salon chooses itself: a card's number, a word. */
  ticket: { kind: 'text', maxLength: 12, isTicket: true },
  chair: { kind: 'number', field: { quantity: 'count', min: 1, max: 30, step: 1 } },
  /** Who does her hair; empty: whoever starts her. */
  stylist: { kind: 'text', maxLength: 20, or: '' },
  /** A person said that she is the client of that closed record; empty: nobody said so. */
  lastTimeId: { kind: 'text', maxLength: 32, or: '' },
} as const satisfies Form;

export const stepForm = { step: { kind: 'choice', options: askSteps } } as const satisfies Form;

export const reopenedForm = { step: { kind: 'choice', options: backSteps } } as const satisfies Form;

/** Who lifts which judgement stop, for this service only, and why? */
export const overriddenForm = {
  rule: { kind: 'choice', options: ruleIds },
  code: { kind: 'choice', options: ['knowsHerHair', 'makerAllows', 'seniorAgreed', 'strandHeld'] },
  words: { kind: 'text', maxLength: 200 },
} as const satisfies Form;

/** One stop, as `SpokenFor` says it. Lengths: an id's, twice the longest kind there is, and a digest's. */
const spokenForForm = {
  record: { kind: 'text', maxLength: 32 },
  stop: { kind: 'text', maxLength: 80 },
  entry: { kind: 'text', maxLength: 64 },
} as const satisfies Form;

/** So many stops one correction may name. Assumed because of one ticket far fewer ever stand; more only keep rubbish out. */
export const ASSUMED_STOPS_SPOKEN_FOR = 200;

/** Which answer was wrong, and how did that come? */
export const correctedForm = {
  answer: { kind: 'choice', options: correctables },
  code: {
    kind: 'choice',
    options: ['wrongTap', 'clientCorrectedIt', 'misheard', 'wrongClient', 'hasChanged'],
  },
  words: { kind: 'text', maxLength: 200 },
  /** Of a stop that was handed on: which stops it speaks for, as the station knew them then. It lifts those and no others. */
  speaksFor: {
    kind: 'list',
    of: spokenForForm,
    min: 0,
    max: ASSUMED_STOPS_SPOKEN_FOR,
    stamped: true,
    addedIn: 6,
  },
} as const satisfies Form;

/** Which outcome was a wrong tap? */
export const retractedForm = {
  zone: { kind: 'choice', options: zones },
  code: correctedForm.code,
  words: correctedForm.words,
} as const satisfies Form;

export const decidedForm = { decision: { kind: 'choice', options: decisions } } as const satisfies Form;

export const parkedForm = { untilAtMs: { kind: 'time', tense: 'coming' } } as const satisfies Form;

/** Why does this consultation end without colour? */
export const endedForm = {
  reason: {
    kind: 'choice',
    options: ['hairTooWeak', 'notSafeToday', 'changedHerMind', 'noTime', 'startedByMistake', 'other'],
  },
} as const satisfies Form;

/** What was felt or seen? Throat, breath or faintness: the emergency number first. */
export const reactionForm = {
  signs: {
    kind: 'choices',
    options: ['unclear', 'stinging', 'burning', 'blisters', 'swelling', 'hives', 'breath', 'faint', 'eyes'],
    none: 'unclear',
  },
} as const satisfies Form;

/**
 * Why was it none? Nobody is held up for a reason: what nobody said is kept as that. And where water was said to run since
 * it was told: is the colour still on? Then its clock goes on from its old start.
 */
export const noReactionForm = {
  why: { kind: 'choice', options: ['notSaid', 'lookedNothingSeen', 'onlyCool', 'wrongTap'], or: 'notSaid' },
  stillOn: { kind: 'choice', options: ['no', 'yes'], or: 'no', addedIn: 5 },
} as const satisfies Form;

export const careForm = {
  care: { kind: 'choice', options: ['rinsed', 'rinsedAndDoctor', 'emergencyCalled', 'callRefused'] },
} as const satisfies Form;

export const clockForm = { clock: { kind: 'text', maxLength: 40 } } as const satisfies Form;

/**
 * By how much was the tablet's clock set back? Always below zero.
 * At most about a hundred years: ASSUMED, no tablet's clock begins earlier.
 */
export const clockCorrectedForm = {
  shiftMs: { kind: 'number', field: { quantity: 'count', min: -3.2e12, max: -1, step: 1 } },
} as const satisfies Form;

/** By how much was the tablet's clock put ahead while a skin test was on? Range as above. */
export const clockPutAheadForm = {
  aheadMs: { kind: 'number', field: { quantity: 'count', min: 1, max: 3.2e12, step: 1 } },
} as const satisfies Form;

export const nothingForm = {} as const satisfies Form;
