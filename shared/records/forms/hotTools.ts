import { ASSUMED_PLATE_WIDTH_CM, DEFAULT_SECONDS_A_SECTION } from '../../heat/habit';
import type { AnswersOf, Form } from '../form';

/**
 * What has heat done at home, and what has been on the hair?
 * "None" for the chemistry never clears the heat. What is taken where she gives no figure has its mark in
 * shared/heat/habit.ts. Ranges: ASSUMED, wide enough that only a slip of the finger lies outside: from once a month,
 * for a week, to every day of thirty years; from hand-warm (40 °C) to past what household tools are sold for (250);
 * regrowth from a few days' to five years'.
 */
const habitForm = {
  tool: {
    kind: 'choice',
    options: ['flatIron', 'curlingIron', 'wand', 'hotBrush', 'rollers', 'dryer', 'other'],
  },
  wetness: { kind: 'choice', options: ['wet', 'damp', 'dry', 'unknown'] },
  daysAWeek: { kind: 'number', field: { quantity: 'count', min: 0.25, max: 7 }, unknown: true },
  forMonths: {
    kind: 'number',
    field: { quantity: 'count', min: 0.25, max: 360, countsBack: true },
    unknown: true,
  },
  settingC: { kind: 'number', field: { quantity: 'temperature', min: 40, max: 250 }, unknown: true },
  secondsASection: {
    kind: 'number',
    field: { quantity: 'seconds', min: 1, max: 600 },
    unknown: true,
    or: DEFAULT_SECONDS_A_SECTION,
    more: true,
  },
  plateWidthCm: {
    kind: 'number',
    field: { quantity: 'length', min: 0.5, max: 10 },
    or: ASSUMED_PLATE_WIDTH_CM,
    more: true,
  },
  passes: {
    kind: 'number',
    field: { quantity: 'count', min: 1, max: 30, step: 1 },
    unknown: true,
    or: 'unknown',
    more: true,
  },
  /** 0 while she still does. */
  stoppedMonthsAgo: {
    kind: 'number',
    field: { quantity: 'count', min: 0, max: 360, countsBack: true },
    unknown: true,
    or: 0,
    more: true,
    addedIn: 2,
  },
} as const satisfies Form;

const bleached = { question: 'history', is: ['lightener', 'unknown'] } as const;
const measured = { question: 'growth', is: ['measured'] } as const;

/** Two weeks after a relaxer, a perm or a keratin service: common practice, no source. */
export const hotToolsForm = {
  habits: { kind: 'list', of: habitForm, min: 0, max: 8 },
  smoke: { kind: 'choice', options: ['no', 'smokes', 'smellsBurnt', 'unknown'] },
  /** A spray weighs nothing in the risk: no published figure says how much it spares. So it bears on no plan. */
  spray: {
    kind: 'choice',
    options: ['never', 'sometimes', 'always', 'unknown'],
    or: 'unknown',
    when: { question: 'habits', is: ['some'] },
    aside: true,
  },
  history: {
    kind: 'choices',
    options: [
      'none',
      'unknown',
      'salonColour',
      'boxColour',
      'unknownBoxColour',
      'henna',
      'compoundHenna',
      'metallicColour',
      'gloss',
      'sunSpray',
      'keratin',
      'relaxer',
      'perm',
      'lightener',
      'poolWater',
      'wellWater',
    ],
    none: 'none',
  },
  bleaches: {
    kind: 'number',
    field: { quantity: 'count', min: 0, max: 20, step: 1 },
    unknown: true,
    when: bleached,
  },
  /** When bleach was last on it, and where: hair that grew since has none. 0 for this month. */
  lastBleachMonthsAgo: {
    kind: 'number',
    field: { quantity: 'count', min: 0, max: 360, countsBack: true },
    unknown: true,
    or: 'unknown',
    more: true,
    when: bleached,
    addedIn: 2,
  },
  bleachReach: {
    kind: 'choice',
    options: ['all', 'roots', 'ends', 'band', 'unknown'],
    or: 'unknown',
    more: true,
    when: bleached,
    addedIn: 2,
  },
  relaxedWithinTwoWeeks: {
    kind: 'choice',
    options: ['no', 'yes', 'unknown'],
    when: { question: 'history', is: ['relaxer', 'perm', 'keratin', 'unknown'] },
  },
  /** Usual growth, or measured on her: what has grown since a colour of known date. It changes no plan. */
  growth: {
    kind: 'choice',
    options: ['usual', 'measured'],
    or: 'usual',
    more: true,
    aside: true,
    addedIn: 2,
  },
  regrowthCm: {
    kind: 'number',
    field: { quantity: 'length', min: 0.2, max: 60 },
    when: measured,
    aside: true,
    addedIn: 2,
  },
  regrowthWeeks: {
    kind: 'number',
    field: { quantity: 'count', min: 1, max: 260, countsBack: true },
    when: measured,
    aside: true,
    addedIn: 2,
  },
} as const satisfies Form;

export type HabitAnswers = AnswersOf<typeof habitForm>;
export type HotToolsAnswers = AnswersOf<typeof hotToolsForm>;
