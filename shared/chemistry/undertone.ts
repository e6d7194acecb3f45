/** Undertones met on lightening, at level 1 to 10. From memory: cosmetology textbooks. */
export const undertones = [
  'darkRedBrown',
  'redBrown',
  'red',
  'redOrange',
  'orange',
  'goldOrange',
  'gold',
  'yellowGold',
  'yellow',
  'paleYellow',
] as const;

export type Undertone = (typeof undertones)[number];

/**
 * Which undertone is to be expected at this level? One at a whole level, both neighbours at a half; none outside 1 to 10.
 * What is met, not what was seen: a look may name another. Checked in tests/evidence/undertone.test.ts.
 */
export function listUndertones(level: number): readonly Undertone[] {
  return [...new Set([Math.floor(level), Math.ceil(level)])].flatMap((whole) => undertones[whole - 1] ?? []);
}

/** Offered beside the expected one: undertones of levels less than two away. Exact, by counting levels. */
const NEAR_LEVELS = 1.5;

/**
 * Which undertones is a strand at this level likely to show instead? Those of the levels beside it, darkest first; the
 * one that is to be expected alone is not among them. None where the level is none. Checked in
 * tests/evidence/undertone.test.ts.
 */
export function listNearUndertones(level: number): readonly Undertone[] {
  const expected = listUndertones(level);
  return undertones.filter(
    (undertone, index) =>
      Math.abs(index + 1 - level) <= NEAR_LEVELS && !(expected.length === 1 && expected[0] === undertone),
  );
}
