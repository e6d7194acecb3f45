import { goBackDays, nameDay } from './dayNames';

/** The first day and the last, YYYY-MM-DD, as they stand in their fields; empty where nobody said one. */
export interface DayRange {
  readonly from: string;
  readonly day: string;
}

/**
 * So many days are shown at once at the most. Assumed because all of them are read at one go, on the tablet whose clocks run:
 * a month holds a few hundred visits.
 */
export const ASSUMED_MOST_DAYS = 31;

/** Why these days are not shown. */
export type RangeRefusal = 'unsaid' | 'backwards' | 'ahead' | 'tooMany';

/** Noon of this day on the wall, ms: no change of the clock moves it to another day. NaN where it is none. */
export const findNoon = (day: string): number => new Date(`${day}T12:00`).getTime();

/** So many days before this one; as it stands where it is none. */
export const stepBack = (day: string, days: number): string =>
  Number.isNaN(findNoon(day)) ? day : nameDay(goBackDays(findNoon(day), days));

/** How many days, the first and the last counted? 0 or less where they run backwards. */
export const countDays = ({ from, day }: DayRange): number =>
  Math.round((findNoon(day) - findNoon(from)) / 86_400_000) + 1;

/** May these days be shown, or why not? `today` as on the wall. Checked in tests/src/screens/day/dayRange.test.tsx. */
export function judgeRange(range: DayRange, today: string): RangeRefusal | null {
  const count = countDays(range);
  if (Number.isNaN(count)) return 'unsaid';
  if (count < 1) return 'backwards';
  if (range.day > today) return 'ahead';
  return count > ASSUMED_MOST_DAYS ? 'tooMany' : null;
}
