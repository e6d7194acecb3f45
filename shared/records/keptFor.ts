import { msPerDay } from '../units/time';

/** A month of keeping is its longest, so that nothing goes before its date in the calendar. */
const DAYS_A_MONTH = 31;

/**
 * Until when is a record of this moment kept? In ms since 1970-01-01 UTC, `months` of 31 days later; null: no end.
 * Checked in tests/shared/records/keptFor.test.ts.
 */
export const findKeptUntilMs = (atMs: number, months: number | null): number | null =>
  months === null ? null : atMs + months * DAYS_A_MONTH * msPerDay;

/** Has it been kept for as long as the owner said? On the last moment it has not. */
export const isPastKeeping = (atMs: number, months: number | null, nowMs: number): boolean => {
  const until = findKeptUntilMs(atMs, months);
  return until !== null && nowMs > until;
};
