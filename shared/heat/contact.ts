import type { Range } from '../units/range';
import { type HeatHabit, isGliding } from './habit';

/**
 * Of the time an iron travels a section, which share does it touch any one centimetre of it?
 * A gliding plate: its width along the strand ÷ the length ironed. A tool that stays: all of it. Between 0 and 1; a
 * plate wider than the length, or a width or length that cannot be, counts as all of it, the careful side.
 * Exact geometry. Checked by tests/shared/heat/contact.test.ts.
 */
export function computeContactShare(
  habit: Pick<HeatHabit, 'tool' | 'plateWidthCm'>,
  lengthIronedCm: number,
): number {
  const share = habit.plateWidthCm / lengthIronedCm;
  return isGliding(habit.tool) && share > 0 && share < 1 ? share : 1;
}

/** The same where the length is not known to the centimetre: the shortest hair is touched for the largest share. */
export const computeContactShares = (
  habit: Pick<HeatHabit, 'tool' | 'plateWidthCm'>,
  { low, typical, high }: Range,
): Range => ({
  low: computeContactShare(habit, high),
  typical: computeContactShare(habit, typical),
  high: computeContactShare(habit, low),
});
