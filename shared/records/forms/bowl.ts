import type { AnswersOf, Form } from '../form';
import { zones } from '../zones';
import { mixQuestions } from './test';

const zone = { kind: 'choice', options: zones } as const;

/** What goes into the bowl: shades in parts, the developer at hand, and how long it is meant to stay. */
export const bowlForm = {
  zone,
  shades: {
    kind: 'list',
    of: {
      shade: { kind: 'text', maxLength: 30 },
      parts: { kind: 'number', field: { quantity: 'parts', min: 0.25, max: 20 }, or: 1 },
    },
    min: 1,
    max: 6,
  },
  colourG: { kind: 'number', field: { quantity: 'mass', min: 5, max: 300 }, or: 40 },
  ...mixQuestions,
} as const satisfies Form;

/** Which bowl? */
export const zoneForm = { zone } as const satisfies Form;

/** Why is more time right? Within the maker's limit only; a running test is never held. */
export const extendedForm = {
  clock: { kind: 'text', maxLength: 40 },
  minutes: { kind: 'number', field: { quantity: 'minutes', min: 1, max: 30 } },
  reason: { kind: 'choice', options: ['liftIsSlow', 'greyResists', 'makerSaysSo'] },
} as const satisfies Form;

/** How should she treat it at home? Nothing hot for 48 h: ASSUMED. */
export const planForm = {
  settingC: { kind: 'number', field: { quantity: 'temperature', min: 40, max: 250 } },
  passes: { kind: 'number', field: { quantity: 'count', min: 1, max: 3, step: 1 }, or: 1 },
  restH: { kind: 'number', field: { quantity: 'count', min: 48, max: 336, step: 1 }, or: 48 },
} as const satisfies Form;

export type BowlAnswers = AnswersOf<typeof bowlForm>;
export type PlanAnswers = AnswersOf<typeof planForm>;
