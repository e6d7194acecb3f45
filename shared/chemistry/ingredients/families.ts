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

/** Words of letters and digits, as INCI has them; each begins with one. */
const plainWords = /^[A-Z\d][A-Z\d/,'-]*(?: [A-Z\d][A-Z\d/,'-]*)*$/;
const number = /^POLYQUATERNIUM(\d{1,3})$/;

/**
 * To which family does a name belong that does not stand in the table itself? Undefined for one that joins names of
 * another group ("AQUA DIMETHICONE"): that is two names, of which neither is to be lost.
 */
export function findFamily(
  name: string,
  findKnown: (word: string) => { readonly group: string } | undefined,
): Member | undefined {
  const polyquaternium = number.exec(compareBy(name))?.[1];
  if (polyquaternium !== undefined)
    return { name: `POLYQUATERNIUM-${Number(polyquaternium)}`, group: 'polyquaternium' };
  const group = families.find(([pattern]) => pattern.test(name))?.[1];
  if (group === undefined || !plainWords.test(name) || /\b(?:AND|ET|UND)\b/.test(name)) return undefined;
  const others = name.split(' ').map((word) => findKnown(word)?.group);
  return others.every((other) => other === undefined || other === group) ? { name: name, group } : undefined;
}
