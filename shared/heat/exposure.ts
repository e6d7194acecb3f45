import { brand } from '../units/brand';
import type { Centimetre } from '../units/length';
import { add, exactly, makeRange, multiply, type Range, scale } from '../units/range';
import { type Minutes, secondsPerMinute } from '../units/time';
import {
  ASSUMED_DAYS_A_WEEK,
  ASSUMED_SECONDS_A_SECTION,
  ASSUMED_UNKNOWN_WETNESS_SHARE,
  ASSUMED_WEEKS,
} from './assumedHabit';
import { type HeatHabit, isGliding, isIron, type Wetness } from './habit';

/**
 * Minutes of wet ironing that make one boil equivalent.
 * common practice, no source: half an hour in boiling water sets a curl for good.
 */
export const MINUTES_A_BOIL = 30;

/** The longest that one pass should take, in seconds. common practice, no source: a pass is done within 10 s. */
export const LONGEST_PASS_SECONDS = 10;

/** What she told, or a wide range where she does not know. A figure that cannot be is not known, never none. */
const readTold = (told: number | 'unknown', assumed: Range): Range =>
  told !== 'unknown' && told >= 0 && Number.isFinite(told) ? exactly(told) : assumed;

const none: Range<Minutes> = exactly(brand<Minutes>(0));

/**
 * For how many minutes has an iron travelled one section of her hair?
 * Seconds a section, all passes together, ÷ 60 × days a week × weeks: the dose of the oldest hair this habit touched, wherever that lies
 * now. Exact where she told all three, wide where she did not; zero for a dryer, or where she said zero. Not rounded.
 * common practice, no source: one minute a section, three days a week, two years = 312 minutes.
 * Checked by tests/evidence/heatPractice.test.ts and tests/shared/heat/exposure.test.ts.
 */
export function computeIronMinutes(habit: HeatHabit): Range<Minutes> {
  if (!isIron(habit.tool)) return none;
  const minutesADay = scale(readTold(habit.secondsASection, ASSUMED_SECONDS_A_SECTION), 1 / secondsPerMinute);
  const days = multiply(readTold(habit.daysAWeek, ASSUMED_DAYS_A_WEEK), readTold(habit.weeks, ASSUMED_WEEKS));
  return multiply(minutesADay, days) as Range<Minutes>;
}

/**
 * How many half hours in boiling water is that?
 * Wet iron minutes ÷ 30: a picture to talk by, not a measurement. Not rounded; zero for zero.
 * common practice, no source: 312 minutes are 10.4 such half hours. Checked by tests/evidence/heatPractice.test.ts.
 */
export const computeBoilEquivalents = (wetIronMinutes: Range<Minutes>): Range => {
  const { low, typical, high } = wetIronMinutes;
  return makeRange(low / MINUTES_A_BOIL, typical / MINUTES_A_BOIL, high / MINUTES_A_BOIL);
};

/**
 * Of the time an iron travels a section, which share does it touch any one centimetre of it?
 * A gliding plate: its width along the strand ÷ the length ironed. A tool that stays: all of it. Between 0 and 1; a
 * plate wider than the length, or a width or length that cannot be, counts as all of it, the careful side.
 * Exact geometry. Checked by tests/shared/heat/exposure.test.ts.
 */
export function computeContactShare(
  habit: Pick<HeatHabit, 'tool' | 'plateWidthCm'>,
  lengthIroned: Centimetre,
): number {
  const share = habit.plateWidthCm / lengthIroned;
  return isGliding(habit.tool) && share > 0 && share < 1 ? share : 1;
}

/**
 * For how many minutes has hot metal touched any one centimetre?
 * Iron minutes × contact share. The trade counts iron minutes; dose models need these. Not rounded.
 * Checked by tests/evidence/heatPractice.test.ts and tests/shared/heat/exposure.test.ts.
 */
export const computeContactMinutes = (habit: HeatHabit, lengthIroned: Centimetre): Range<Minutes> =>
  scale(computeIronMinutes(habit), computeContactShare(habit, lengthIroned));

/** Is this pass done in the time a pass should take? Up to and including 10 s; not for zero, negative or NaN. */
export const isPassShortEnough = (seconds: number): boolean => seconds > 0 && seconds <= LONGEST_PASS_SECONDS;

/**
 * Is each of her passes done in the time a pass should take?
 * The seconds of a section are those of all its passes together, so passes never multiply the dose: they only say how
 * slow each one is. Not known, or a tool that stays: no. Checked by tests/shared/heat/exposure.test.ts.
 */
export function hasShortPasses({
  tool,
  secondsASection,
  passes,
}: Pick<HeatHabit, 'tool' | 'secondsASection' | 'passes'>): boolean {
  if (!isGliding(tool) || secondsASection === 'unknown' || passes === 'unknown') return false;
  return isPassShortEnough(secondsASection / passes);
}

/** Iron minutes by how wet the hair was, and the wet ones as half hours in boiling water. */
export interface HeatExposure {
  readonly wet: Range<Minutes>;
  readonly damp: Range<Minutes>;
  readonly dry: Range<Minutes>;
  readonly boilEquivalents: Range;
}

/** The part of a habit's minutes that may have met hair this wet. */
function takePart(habit: HeatHabit, wetness: Wetness): Range<Minutes> {
  const minutes = computeIronMinutes(habit);
  if (habit.wetness === wetness) return minutes;
  if (habit.wetness !== 'unknown') return none;
  const typical = minutes.typical * ASSUMED_UNKNOWN_WETNESS_SHARE;
  return makeRange(none.low, brand<Minutes>(typical), minutes.high);
}

/**
 * What has all that heat done, wet, damp and dry?
 * Habits add up as if all had met the same oldest hair. Minutes of unknown wetness may be all wet, all damp or all
 * dry: each of the three gets none of them at least, a third most likely, and all of them at most. So the three
 * typical figures make the typical total, while the three highest must not be added together. Damp minutes are not
 * boil equivalents: the rule speaks of wet hair. No habits, no heat. Not rounded.
 * Checked by tests/shared/heat/exposure.test.ts.
 */
export function sumExposure(habits: readonly HeatHabit[]): HeatExposure {
  const sumOf = (wetness: Wetness) => habits.map((habit) => takePart(habit, wetness)).reduce(add, none);
  const wet = sumOf('wet');
  return { wet, damp: sumOf('damp'), dry: sumOf('dry'), boilEquivalents: computeBoilEquivalents(wet) };
}
