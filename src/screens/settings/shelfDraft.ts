import { readIngredientList } from '../../../shared/chemistry/ingredients/readIngredientList';
import type { ShelfAnswers } from '../../../shared/records/forms/shelf';
import type { FieldRefusal } from '../../../shared/records/readForm';
import type { ShelfEntry } from '../../../shared/records/settings';

const toAnswer = (seconds: number | null): number | 'unknown' => seconds ?? 'unknown';
const toSeconds = (answer: number | 'unknown'): number | null => (answer === 'unknown' ? null : answer);

/** One product of the shelf as the answers of its form; what it does not have is unknown, empty, or no row. */
export const draftEntry = ({ trial, ...entry }: ShelfEntry) => ({
  ...entry,
  trial:
    trial === undefined
      ? []
      : [{ atMs: trial.atMs, bareS: toAnswer(trial.bareS), sprayedS: toAnswer(trial.sprayedS) }],
});

/** The product these answers say. What was left empty is left out, so that it is written as it always was. */
export function makeEntry({
  name,
  kind,
  ingredients,
  makerSaysUpToC,
  useWithinMin = 'unknown',
  trial,
}: ShelfAnswers): ShelfEntry {
  const [tried] = trial;
  return {
    name,
    kind,
    ...(ingredients === '' ? {} : { ingredients }),
    ...(makerSaysUpToC === 'unknown' ? {} : { makerSaysUpToC }),
    ...(useWithinMin === 'unknown' ? {} : { useWithinMin }),
    ...(tried === undefined
      ? {}
      : {
          trial: {
            atMs: tried.atMs,
            bareS: toSeconds(tried.bareS),
            sprayedS: toSeconds(tried.sprayedS),
          },
        }),
  };
}

/** Which lists cannot be read as one? None at all is no mistake; why it cannot be read is said where it stands. */
export const listUnreadLists = (shelf: readonly ShelfAnswers[]): readonly FieldRefusal[] =>
  shelf.flatMap(({ ingredients }, row): readonly FieldRefusal[] => {
    const read = readIngredientList(ingredients);
    if (read.ok || read.error.code === 'empty') return [];
    const path = `shelf.${row}.ingredients`;
    const { error } = read;
    return ['most' in error ? { path, ...error } : { path, code: 'malformed' }];
  });
