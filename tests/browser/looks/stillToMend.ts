import type { LooksRule } from './finding';

/** How many findings of each rule are known and not mended yet. These numbers may only shrink. */
export const stillToMend: Readonly<Record<LooksRule, number>> = {
  notShown: 3,
  scrolls: 160,
  scrollsSideways: 14,
  clipped: 30,
  torn: 1,
  overlap: 330,
  target: 1500,
  contrast: 4,
  primary: 6,
  axe: 90,
  keyboard: 45,
};
