import type { Days } from '../../../shared/records/day/dayRecords';

const twoDigits = (value: number): string => String(value).padStart(2, '0');

/** Which day is it on the wall of this salon? YYYY-MM-DD, in the tablet's time zone. */
export function nameDay(atMs: number): string {
  const at = new Date(atMs);
  return `${at.getFullYear()}-${twoDigits(at.getMonth() + 1)}-${twoDigits(at.getDate())}`;
}

/** So many days back from this moment, at the same time of day. */
export function goBackDays(atMs: number, days: number): number {
  const at = new Date(atMs);
  at.setDate(at.getDate() - days);
  return at.getTime();
}

/** One day so many days `back`, or the `days` up to it. */
export const countBack = (
  nowMs: number,
  { back = 0, days = 1 }: { readonly back?: number; readonly days?: number } = {},
): Days => ({
  from: nameDay(goBackDays(nowMs, back + days - 1)),
  day: nameDay(goBackDays(nowMs, back)),
  nameDay,
});

/** What a day is handed out as, and the key to each. */
export type DayFile = 'json' | 'json.schema.json' | 'csv' | 'csv.schema.json';

/** Under which name is the day handed out? No client stands in it. */
export const nameDayFile = (
  { from, day }: Pick<Days, 'from' | 'day'>,
  isDemo: boolean,
  kind: DayFile = 'json',
): string => {
  const days = from === day ? `day-${day}` : `days-${from}-to-${day}`;
  return `strandproof-${isDemo ? 'demo-' : ''}${days}.${kind}`;
};
