import { type HeatHabit, isGliding } from './habit';

/** The longest that one pass should take, in seconds. common practice, no source: a pass is done within 10 s. */
export const LONGEST_PASS_SECONDS = 10;

/** Is this pass done in the time a pass should take? Up to and including 10 s; not for zero, negative or NaN. */
export const isPassShortEnough = (seconds: number): boolean => seconds > 0 && seconds <= LONGEST_PASS_SECONDS;

/**
 * Is each of her passes done in the time a pass should take?
 * The seconds of a section are those of all its passes together, so passes never multiply the dose: they only say how
 * slow each one is. Not known, or a tool that stays: no. Checked by tests/shared/heat/passes.test.ts.
 */
export function hasShortPasses({
  tool,
  secondsASection,
  passes,
}: Pick<HeatHabit, 'tool' | 'secondsASection' | 'passes'>): boolean {
  if (!isGliding(tool) || secondsASection === 'unknown' || passes === 'unknown') return false;
  return isPassShortEnough(secondsASection / passes);
}
