/** Undertones met on lightening, at level 1 to 10. From memory: cosmetology textbooks. */
const undertones = [
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
 * What is met, not what was seen: nobody is asked for it. Checked in tests/evidence/undertone.test.ts.
 */
export function listUndertones(level: number): readonly Undertone[] {
  return [...new Set([Math.floor(level), Math.ceil(level)])].flatMap((whole) => undertones[whole - 1] ?? []);
}
