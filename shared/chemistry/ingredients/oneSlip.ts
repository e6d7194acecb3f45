/** How many letters do both begin with? */
function countSameStart(one: string, other: string): number {
  let count = 0;
  while (count < one.length && one[count] === other[count]) count += 1;
  return count;
}

const keepDigits = (text: string): string => text.replace(/\D/g, '');

/**
 * Could one be the other with one slip of the finger: a letter too many, missing, another one, or two swapped?
 * Numbers are never a slip: POLYQUATERNIUM-7 is not POLYQUATERNIUM-70. Looks at each letter once, and at none where
 * the lengths differ by more than one. Checked by tests/shared/chemistry/ingredients/oneSlip.test.ts.
 */
export function isOneSlipAway(one: string, other: string): boolean {
  if (Math.abs(one.length - other.length) > 1 || one === other) return false;
  if (keepDigits(one) !== keepDigits(other)) return false;
  const start = countSameStart(one, other);
  const [a, b] = [one.slice(start), other.slice(start)];
  const isAnother = a.slice(1) === b.slice(1);
  const isTooMany = a.slice(1) === b;
  const isMissing = a === b.slice(1);
  const isSwapped = a[0] === b[1] && a[1] === b[0] && a.slice(2) === b.slice(2);
  return isAnother || isTooMany || isMissing || isSwapped;
}
