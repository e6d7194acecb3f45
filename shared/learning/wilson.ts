/** Two-sided 95 %: the 97.5 % point of the standard normal; exact to the digits written. */
const Z_95 = 1.959963984540054;

/** A share as counted, and where the true one may lie. All from 0 to 1. */
export interface CountedShare {
  readonly count: number;
  readonly of: number;
  /** As counted; 0 of none. */
  readonly share: number;
  readonly low: number;
  readonly high: number;
}

/**
 * Of so many strands so many broke: where may the true share lie, 19 times in 20?
 * Wilson's score interval without continuity correction (published: Wilson, J. Am. Stat. Assoc. 22:209–212, 1927, from
 * memory; figures of Newcombe, Stat. Med. 17:857–872, 1998). Of none at all it is anywhere, 0 to 1. Whole counts,
 * 0 ≤ count ≤ of. Checked in tests/evidence/learning.test.ts.
 */
export function countShare(count: number, of: number): CountedShare {
  if (of === 0) return { count, of, share: 0, low: 0, high: 1 };
  const share = count / of;
  const z2 = Z_95 * Z_95;
  const middle = share + z2 / (2 * of);
  const reach = Z_95 * Math.sqrt((share * (1 - share)) / of + z2 / (4 * of * of));
  const whole = 1 + z2 / of;
  return {
    count,
    of,
    share,
    low: count === 0 ? 0 : (middle - reach) / whole,
    high: count === of ? 1 : (middle + reach) / whole,
  };
}
