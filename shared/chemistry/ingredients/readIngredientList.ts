import { accept, type Result, refuse } from '../../result';
import type { Ingredient, IngredientListRefusal } from './ingredient';
import { hasName } from './labelName';
import { readLines } from './readNames';
import { splitList } from './splitList';

/** How long may a list be? Letters. Assumed because a label with a hundred names in two languages is half as long. */
export const ASSUMED_LONGEST_LIST = 10_000;

/** How many names may stand in it? Assumed because no label comes near, and each is compared with the whole table. */
export const ASSUMED_MOST_NAMES = 200;

/**
 * What stands on the label?
 * Takes a list as typed or pasted, in capitals or not, and gives its names in order; a name that stands there twice
 * is given twice. `asWritten` is in plain letters (NFKC) and loses nothing but separators. One slip of the finger is
 * put right and told ('corrected'); what the table does not know stays as it was written ('unknown'). Any text gives
 * a value or a refusal, never an exception, in time that grows with its length.
 * Checked by tests/shared/chemistry/ingredients/readIngredientList.test.ts and properties.test.ts.
 */
export function readIngredientList(text: string): Result<readonly Ingredient[], IngredientListRefusal> {
  if (text.trim() === '') return refuse({ code: 'empty' });
  if (text.length > ASSUMED_LONGEST_LIST) return refuse({ code: 'tooLong', most: ASSUMED_LONGEST_LIST });
  const plain = text.normalize('NFKC');
  if (plain.length > ASSUMED_LONGEST_LIST) return refuse({ code: 'tooLong', most: ASSUMED_LONGEST_LIST });
  const pieces = splitList(plain).filter((lines) => lines.some(hasName));
  if (pieces.length === 0) return refuse({ code: 'nothingRead' });
  if (pieces.flat().length > ASSUMED_MOST_NAMES) return refuse({ code: 'tooMany', most: ASSUMED_MOST_NAMES });
  const read = pieces.flatMap(readLines);
  return read.length > ASSUMED_MOST_NAMES
    ? refuse({ code: 'tooMany', most: ASSUMED_MOST_NAMES })
    : accept(read);
}
