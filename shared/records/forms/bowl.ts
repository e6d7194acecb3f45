import { ASSUMED_TONER_MAX_MIN, TONER_MAX_PERCENT } from '../../judgement/tonerLimits';
import type { AnswersOf, Form } from '../form';
import { zones } from '../zones';
import { mixQuestions } from './test';

const zone = { kind: 'choice', options: zones } as const;

/**
 * How the bowl was weighed, beside what was asked of the scale. `bottles`: the stronger and the weaker of two that make
 * the strength, none where one bottle has it. `weighed`: what the scale said of each, shades in their order and then the
 * developer or both bottles of it; none where nobody weighed item by item. `mixedMinAgo`: so long before it was called
 * weighed the first developer went in, min.
 * Ranges: ASSUMED, wide enough that only a slip of the finger lies outside; what a bottle may be is judged with the bowl.
 */
const scaleQuestions = {
  bottles: {
    kind: 'list',
    of: { percent: { kind: 'number', field: { quantity: 'percent', min: 0.5, max: 60 } } },
    min: 0,
    max: 2,
    addedIn: 5,
  },
  weighed: {
    kind: 'list',
    of: { amountG: { kind: 'number', field: { quantity: 'mass', min: 0, max: 1000 } } },
    min: 0,
    max: 8,
    addedIn: 5,
  },
  mixedMinAgo: { kind: 'number', field: { quantity: 'minutes', min: 0, max: 1440 }, or: 0, addedIn: 5 },
} as const;

/**
 * What goes into the bowl: shades in parts, the developer at hand, and how long it is meant to stay.
 * Ranges: ASSUMED, wide enough that only a slip of the finger lies outside; 40 g of colour where nothing else is said:
 * common practice, no source. What the mix itself may be stands in test.ts.
 */
export const bowlForm = {
  zone,
  shades: {
    kind: 'list',
    of: {
      shade: { kind: 'text', maxLength: 40 },
      parts: { kind: 'number', field: { quantity: 'parts', min: 0.25, max: 20 }, or: 1 },
    },
    min: 1,
    max: 6,
  },
  colourG: { kind: 'number', field: { quantity: 'mass', min: 5, max: 300 }, or: 40 },
  ...mixQuestions,
  ...scaleQuestions,
} as const satisfies Form;

const { heat: _heat, ...withoutHeat } = mixQuestions;

/**
 * What goes into a toner: a bowl of its own after a rinse, that only deposits, with no heat.
 * Developer up to 10 vol: common practice, no source. Minutes: ASSUMED_TONER_MAX_MIN. Other ranges as for a bowl.
 */
export const tonerForm = {
  zone,
  shades: bowlForm.shades,
  colourG: bowlForm.colourG,
  ...withoutHeat,
  developerPercent: {
    kind: 'number',
    field: { ...mixQuestions.developerPercent.field, max: TONER_MAX_PERCENT },
  },
  minutes: { kind: 'number', field: { ...mixQuestions.minutes.field, max: ASSUMED_TONER_MAX_MIN } },
} as const satisfies Form;

const toldWrongly = { question: 'before', is: ['wrongTap'] } as const;

/**
 * How does the hair on her head come back after a light pull, wet, once the bowl is rinsed out? Words as on a strand. What
 * was felt before stands beside it, unless whoever feels again says, by name and reason, that it was told wrongly.
 */
export const stretchForm = {
  zone,
  stretch: { kind: 'choice', options: ['springsBack', 'staysLong', 'snaps'] },
  before: { kind: 'choice', options: ['stands', 'wrongTap'] },
  code: { kind: 'choice', options: ['wrongTap', 'otherZone'], when: toldWrongly, addedIn: 5 },
  words: { kind: 'text', maxLength: 200, or: '', when: toldWrongly, addedIn: 5 },
} as const satisfies Form;

/**
 * Which bowl goes on, and how is the skin it goes on? Asked with the tap that begins, by its value and never as "checked"
 * (published: Degani & Wiener, Human Factors 35:28–43, 1993).
 */
export const appliedForm = {
  zone,
  skinFirst: { kind: 'choice', options: ['calm', 'notCalm'], addedIn: 4 },
} as const satisfies Form;

/** Which bowl is thrown away? And was it because her skin was not calm when it was to go on? */
export const thrownForm = {
  zone,
  why: { kind: 'choice', options: ['notSaid', 'skinNotCalm'], or: 'notSaid', addedIn: 5 },
} as const satisfies Form;

/** Which bowl? */
export const zoneForm = { zone } as const satisfies Form;

/**
 * Why is more time right? Within the maker's limit only; a running test is never held.
 * At most half an hour at a time: ASSUMED range.
 */
export const extendedForm = {
  clock: { kind: 'text', maxLength: 40 },
  minutes: { kind: 'number', field: { quantity: 'minutes', min: 1, max: 30 } },
  reason: { kind: 'choice', options: ['liftIsSlow', 'greyResists', 'makerSaysSo'] },
} as const satisfies Form;

/**
 * For so many hours nothing hot touches coloured hair. Assumed because two days let it dry and settle through a wash,
 * and are short enough to be kept.
 */
export const ASSUMED_REST_H = 48;

/**
 * How should she treat it at home, and when does she come back? And before she leaves four things, each said by its value
 * and never as "checked": eight in all, nine or fewer to a pause (published: Degani & Wiener, Human Factors 35:28–43, 1993).
 * No less rest than ASSUMED_REST_H. One pass, four to twelve weeks: common practice, no source.
 * Ranges: ASSUMED, wide enough that only a slip of the finger lies outside: two weeks at most, from hand-warm to past
 * what tools are sold for.
 */
export const planForm = {
  settingC: { kind: 'number', field: { quantity: 'temperature', min: 40, max: 250 } },
  passes: { kind: 'number', field: { quantity: 'count', min: 1, max: 3, step: 1 }, or: 1 },
  restH: {
    kind: 'number',
    field: { quantity: 'count', min: ASSUMED_REST_H, max: 336, step: 1 },
    or: ASSUMED_REST_H,
  },
  back: { kind: 'choice', options: ['weeks4', 'weeks6', 'weeks8', 'weeks12', 'noDate'] },
  skinNow: { kind: 'choice', options: ['calm', 'pink', 'burns'], addedIn: 4 },
  toolsNow: { kind: 'choice', options: ['noneUsed', 'offCooling'], addedIn: 4 },
  lateItching: { kind: 'choice', options: ['saidItBack', 'toldHer', 'notTold'], addedIn: 4 },
  cardNow: { kind: 'choice', options: ['printed', 'byHand', 'photographed', 'notWanted'], addedIn: 4 },
} as const satisfies Form;

export type BowlAnswers = AnswersOf<typeof bowlForm>;
export type StretchAnswers = AnswersOf<typeof stretchForm>;
export type PlanAnswers = AnswersOf<typeof planForm>;
