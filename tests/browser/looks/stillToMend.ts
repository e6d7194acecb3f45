import type { LooksRule } from './finding';

/** How many findings of each rule are known and not mended yet. These numbers may only shrink. */
export const stillToMend: Readonly<Record<LooksRule, number>> = {
  scrolls: 9999,
  scrollsSideways: 9999,
  clipped: 9999,
  torn: 9999,
  overlap: 9999,
  target: 9999,
  contrast: 9999,
  primary: 9999,
  axe: 9999,
  keyboard: 9999,
};
