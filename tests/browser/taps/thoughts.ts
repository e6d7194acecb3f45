import type { StoryStep } from '../../../seeds/story';
import type { Raw, RawForm } from '../../../shared/records/readForm';

const isRows = (value: Raw): value is readonly RawForm[] =>
  Array.isArray(value) && value.some((row) => typeof row === 'object');

const countQuestions = (answers: RawForm): number =>
  Object.values(answers).reduce<number>(
    (sum, value) => sum + (isRows(value) ? value.reduce((rows, row) => rows + countQuestions(row), 0) : 1),
    0,
  );

/**
 * How often does she have to think what to do next (M)? Once for each question she reads, and once for anything else
 * that is done. Not for a look, whose level and feel were seen at the strand before the hand moved, nor for Next,
 * which follows from the last answer: the paper's rules 0 and 1.
 */
export function countThoughts({ raw }: StoryStep): number {
  switch (raw.type) {
    case 'LOOKED':
    case 'STEP_CONFIRMED':
      return 0;
    case 'ANSWERED':
      return countQuestions(raw.answers ?? {});
    case 'OPENED':
    case 'SKIN_TEST_NOTED':
      // Whose, and where; how, and where it was put on.
      return 2;
    default:
      return 1;
  }
}
