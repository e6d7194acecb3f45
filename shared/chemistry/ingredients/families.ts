import { compareBy } from './labelName';
import type { IngredientGroup } from './nameTable';

interface Member {
  readonly name: string;
  readonly group: IngredientGroup;
}

/** What ends or begins a name so says its family, whatever else stands in it. from memory: INCI conventions. */
const families: readonly (readonly [RegExp, IngredientGroup])[] = [
  [/^SD ALCOHOL \d{1,2}(?:-[A-Z])?$/, 'ethanol'],
  [/^HYDROLY[SZ]ED .{1,40} PROTEIN$/, 'protein'],
  [/DIMETHICON(?:E|OL)$/, 'silicone'],
  [/DIMETHICONE\b.{1,80}\b(?:CO|CROSS)POLYMER$/, 'silicone'],
  [/METHICONE$|SILOXANE$/, 'siliconeUntold'],
];

/**
 * What harms is found wherever it stands in a name, in any spelling and beside whatever else: losing it would be worse
 * than losing its neighbour. from memory: INCI and label spellings.
 */
const harmful: readonly (readonly [RegExp, IngredientGroup])[] = [
  [/\bFORMALD/, 'formaldehyde'],
  [/\bGLYOXYLIC ACID\b/, 'glyoxylicAcid'],
  [/\bGLYOXYL/, 'glyoxylicKin'],
];
/** "FORMALDEHYDE-FREE" lists none; it stays a name that is not known. */
const denial = /^(?:NO|NON|WITHOUT|OHNE|SANS)\b|\bFREE\b|FREI$/;

/** Which harmful family does a name belong to, however it goes on? Undefined for one that says there is none of it. */
export function findHarmful(name: string): Member | undefined {
  const group = harmful.find(([pattern]) => pattern.test(name))?.[1];
  return group === undefined || denial.test(name) ? undefined : { name, group };
}

/** Words of letters and digits, as INCI has them; each begins with one. */
const plainWords = /^[A-Z\d][A-Z\d/,'-]*(?: [A-Z\d][A-Z\d/,'-]*)*$/;
const number = /^POLYQUATERNIUM(\d{1,3})$/;

/**
 * To which family does a name belong that does not stand in the table itself? Undefined for one that joins names of
 * another group ("AQUA DIMETHICONE"): that is two names, of which neither is to be lost.
 * Checked by tests/evidence/ingredients.test.ts and tests/shared/chemistry/ingredients/tellIngredients.test.ts.
 */
export function findFamily(
  name: string,
  findKnown: (word: string) => { readonly group: string } | undefined,
): Member | undefined {
  const polyquaternium = number.exec(compareBy(name))?.[1];
  if (polyquaternium !== undefined)
    return { name: `POLYQUATERNIUM-${Number(polyquaternium)}`, group: 'polyquaternium' };
  if (findHarmful(name) !== undefined) return undefined;
  const group = families.find(([pattern]) => pattern.test(name))?.[1];
  if (group === undefined || !plainWords.test(name) || /\b(?:AND|ET|UND)\b/.test(name)) return undefined;
  const others = name.split(' ').map((word) => findKnown(word)?.group);
  return others.every((other) => other === undefined || other === group) ? { name, group } : undefined;
}
