import type { AnswersOf, Form } from '../form';

/**
 * What has heat done at home, and what has been on the hair?
 * "None" for the chemistry never clears the heat. Default of one minute a section: common practice, no source.
 */
const habitForm = {
  tool: {
    kind: 'choice',
    options: ['flatIron', 'curlingIron', 'wand', 'hotBrush', 'rollers', 'dryer', 'other'],
  },
  wetness: { kind: 'choice', options: ['wet', 'damp', 'dry', 'unknown'] },
  daysAWeek: { kind: 'number', field: { quantity: 'count', min: 0.25, max: 7 }, unknown: true },
  forMonths: { kind: 'number', field: { quantity: 'count', min: 0.25, max: 360 }, unknown: true },
  settingC: { kind: 'number', field: { quantity: 'temperature', min: 40, max: 250 }, unknown: true },
  secondsASection: {
    kind: 'number',
    field: { quantity: 'seconds', min: 1, max: 600 },
    unknown: true,
    or: 60,
    more: true,
  },
  plateWidthCm: { kind: 'number', field: { quantity: 'length', min: 0.5, max: 10 }, or: 2.54, more: true },
} as const satisfies Form;

export const hotToolsForm = {
  habits: { kind: 'list', of: habitForm, min: 0, max: 8 },
  smoke: { kind: 'choice', options: ['no', 'smokes', 'smellsBurnt', 'unknown'] },
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
    when: { question: 'history', is: ['lightener', 'unknown'] },
  },
  relaxedWithinTwoWeeks: {
    kind: 'choice',
    options: ['no', 'yes', 'unknown'],
    when: { question: 'history', is: ['relaxer', 'perm', 'keratin', 'unknown'] },
  },
} as const satisfies Form;

export type HabitAnswers = AnswersOf<typeof habitForm>;
export type HotToolsAnswers = AnswersOf<typeof hotToolsForm>;
