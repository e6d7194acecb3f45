import { findFamily, findHarmful } from './families';
import type { Ingredient } from './ingredient';
import { ASSUMED_LONGEST_NAME, compareBy } from './labelName';
import { type IngredientGroup, nameTable } from './nameTable';
import { isOneSlipAway } from './oneSlip';
import { plainNames } from './plainNames';

/**
 * How short may a name be to be put right? Letters. Assumed because shorter names lie one letter apart from others
 * (LACTOSE and LACTASE), and a wrong correction is worse than a name that is told as not known.
 */
export const ASSUMED_SHORTEST_CORRECTED = 8;

interface Row {
  readonly name: string;
  readonly group: IngredientGroup | 'plain';
}

const rowsOf = (group: Row['group'], names: readonly (readonly string[])[]): [string, Row][] =>
  names.flatMap((row) =>
    row.map((written): [string, Row] => [compareBy(written), { name: row[0] ?? written, group }]),
  );

const index: ReadonlyMap<string, Row> = new Map([
  ...rowsOf('plain', plainNames),
  ...Object.entries(nameTable).flatMap(([group, names]) => rowsOf(group as IngredientGroup, names)),
]);

/** Which name of the table is it, to the letter? */
export const findExact = (name: string): Row | undefined =>
  name.length > ASSUMED_LONGEST_NAME ? undefined : index.get(compareBy(name));

/** To which group does a name of the table, or of a family, belong? Undefined where nothing is known of it. */
export function findGroup(name: string): Row['group'] | undefined {
  if (name.length > ASSUMED_LONGEST_NAME) return undefined;
  return (findExact(name) ?? findFamily(name, findExact) ?? findHarmful(name))?.group;
}

/** Which one name of the table is a slip of the finger away? Undefined where there are two, or none. */
function findNearMiss(name: string): string | undefined {
  const compared = compareBy(name);
  if (compared.length < ASSUMED_SHORTEST_CORRECTED) return undefined;
  const near = new Set<string>();
  for (const [known, row] of index) {
    if (known.length >= ASSUMED_SHORTEST_CORRECTED && isOneSlipAway(compared, known)) near.add(row.name);
  }
  return near.size === 1 ? [...near][0] : undefined;
}

/** Which name of the table, or of a family, is meant? Undefined where it is not known, or too long to be compared. */
export function findName(name: string): Pick<Ingredient, 'name' | 'how'> | undefined {
  if (name.length > ASSUMED_LONGEST_NAME) return undefined;
  const known = findExact(name) ?? findFamily(name, findExact);
  if (known !== undefined) return { name: known.name, how: 'known' };
  const near = findNearMiss(name);
  if (near !== undefined) return { name: near, how: 'corrected' };
  const harmful = findHarmful(name);
  return harmful === undefined ? undefined : { name: harmful.name, how: 'known' };
}
