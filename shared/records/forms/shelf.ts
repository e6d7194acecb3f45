import { ASSUMED_LONGEST_LIST } from '../../chemistry/ingredients/readIngredientList';
import { WARMTH_TRIAL_CAP_S } from '../../heat/warmthTrial';
import type { AnswersOf, Form } from '../form';

const seconds = {
  kind: 'number',
  field: { quantity: 'seconds', min: 0, max: WARMTH_TRIAL_CAP_S, step: 1 },
  unknown: true,
} as const;

/**
 * What stands on the shelf: a product line and its kind, and of a spray its ingredient list, what its maker claims and
 * the last warmth trial. Whatever the kind, so that a slip at the kind loses no list. Seconds of a trial are unknown
 * where warmth was not felt within the cap. Ranges: ASSUMED, wide enough that only a slip of the finger lies outside: a
 * maker's figure as wide as the settings of tools; five minutes to two hours from mixing to putting on, which only
 * colour and lightener are asked; seconds end at the cap of the trial.
 */
export const shelfForm = {
  name: { kind: 'text', maxLength: 40 },
  kind: { kind: 'choice', options: ['lightener', 'colour', 'spray'] },
  ingredients: { kind: 'text', maxLength: ASSUMED_LONGEST_LIST, or: '', hasLines: true },
  makerSaysUpToC: {
    kind: 'number',
    field: { quantity: 'temperature', min: 40, max: 250 },
    unknown: true,
    or: 'unknown',
  },
  useWithinMin: {
    kind: 'number',
    field: { quantity: 'minutes', min: 5, max: 120, step: 1 },
    unknown: true,
    or: 'unknown',
    when: { question: 'kind', is: ['lightener', 'colour'] },
  },
  trial: {
    kind: 'list',
    of: { atMs: { kind: 'time', tense: 'past' }, bareS: seconds, sprayedS: seconds },
    min: 0,
    max: 1,
  },
} as const satisfies Form;

export type ShelfAnswers = AnswersOf<typeof shelfForm>;
