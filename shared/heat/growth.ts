import type { Centimetre } from '../units/length';
import { exactly, makeRange, type Range } from '../units/range';
import { daysPerWeek } from '../units/time';

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
/** Mean length of a month in days: 365.25 ÷ 12, exact. */
const daysPerMonth = 30.4375;

/** How many centimetres a week is so many µm a day? Exact, not rounded. */
export const toCmAWeek = (umADay: number): number => (umADay * daysPerWeek) / umPerCm;

/** How many centimetres a month? Of 30.4375 days; exact, not rounded. Checked by tests/evidence/growth.test.ts. */
export const toCmAMonth = (umADay: number): number => (umADay * daysPerMonth) / umPerCm;

const [, { meanUm, sdUm }] = growthMeasured;

/** Growth where it was not measured, cm a week: one standard deviation either side of the mean, see growthMeasured. */
export const usualGrowth: Range = makeRange(
  toCmAWeek(meanUm - sdUm),
  toCmAWeek(meanUm),
  toCmAWeek(meanUm + sdUm),
);

/**
 * How fast has her own hair grown, from the regrowth since a colour of known date? cm a week, without doubt: it is
 * measured. A length or a time of nothing, less or no number is no measurement: the usual growth stands.
 * Checked by tests/shared/heat/doses.test.ts.
 */
export function measureGrowth(regrowth: Centimetre, weeks: number): Range {
  const growth = regrowth / weeks;
  return regrowth > 0 && weeks > 0 && Number.isFinite(growth) && growth > 0 ? exactly(growth) : usualGrowth;
}

/**
 * How old is the hair so far from the scalp? In weeks; the slowest growth makes the oldest hair.
 * Not rounded; a place that is none is a mistake in the code: it throws. Checked by tests/evidence/growth.test.ts.
 */
export const computeAgeWeeks = (place: Centimetre, { low, typical, high }: Range): Range =>
  makeRange(place / high, place / typical, place / low);
