import type { Centimetre } from '../units/length';
import { exactly, makeRange, type Range } from '../units/range';
import { daysPerWeek, weeksPerMeanMonth } from '../units/time';

/**
 * How fast does hair grow, in µm a day, mean and standard deviation?
 * published: Loussouarn, El Rawadi, Genain, Diversity of hair growth profiles, Int. J. Dermatol. 44(Suppl 1):6–9, 2005,
 * Table 1: three populations, 511 adults. Ancestry is not asked: the middle one stands where nothing was measured.
 * Checked by tests/evidence/growth.test.ts.
 */
export const growthMeasured = [
  { meanUm: 280, sdUm: 50 },
  { meanUm: 367, sdUm: 56 },
  { meanUm: 411, sdUm: 53 },
] as const;

const umPerCm = 10_000;
/** How many centimetres a week is so many µm a day? Exact, not rounded. */
export const toCmAWeek = (umADay: number): number => (umADay * daysPerWeek) / umPerCm;

/** How many centimetres a month? Of 30.4375 days; exact, not rounded. Checked by tests/evidence/growth.test.ts. */
export const toCmAMonth = (umADay: number): number => toCmAWeek(umADay) * weeksPerMeanMonth;

const [, { meanUm, sdUm }] = growthMeasured;

/** Growth where it was not measured, cm a week: one standard deviation either side of the mean, see growthMeasured. */
export const usualGrowth: Range = makeRange(
  toCmAWeek(meanUm - sdUm),
  toCmAWeek(meanUm),
  toCmAWeek(meanUm + sdUm),
);

/**
 * Between which figures is a measured growth believed, cm a month?
 * Assumed because the world's hair grows 0.8 to 1.3 (published: Practical Modern Hair Science, 2012, ch. 6 p. 197) and one
 * head may lie somewhat outside; what lies further out is a slip of the tape or of the date.
 */
export const ASSUMED_GROWTH_CM_A_MONTH = { least: 0.5, most: 2 } as const;

/** Can hair have grown so much in so many weeks? Not for a length or a time of nothing, less or no number. */
export function isGrowthPossible(regrowth: Centimetre, weeks: number): boolean {
  const cmAMonth = (regrowth / weeks) * weeksPerMeanMonth;
  const { least, most } = ASSUMED_GROWTH_CM_A_MONTH;
  return regrowth > 0 && weeks > 0 && least <= cmAMonth && cmAMonth <= most;
}

/**
 * How fast has her own hair grown, from the regrowth since a colour of known date? cm a week, without doubt: it is
 * measured. What cannot be is no measurement: the usual growth stands. Checked by tests/shared/heat/doses.test.ts.
 */
export const measureGrowth = (regrowth: Centimetre, weeks: number): Range =>
  isGrowthPossible(regrowth, weeks) ? exactly(regrowth / weeks) : usualGrowth;

/**
 * How old is the hair so far from the scalp? In weeks; the slowest growth makes the oldest hair.
 * Not rounded; a place that is none is a mistake in the code: it throws. Checked by tests/evidence/growth.test.ts.
 */
export const computeAgeWeeks = (place: Centimetre, { low, typical, high }: Range): Range =>
  makeRange(place / high, place / typical, place / low);
