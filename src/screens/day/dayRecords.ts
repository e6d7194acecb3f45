import { type ClosedRecord, parseClosedLog } from '../../../shared/records/closedRecord';
import type { ConsultationEvent } from '../../../shared/records/event';
import { noteMissedLooks } from '../../../shared/records/missedLooks';
import type { ConsultationRecord } from '../../../shared/records/record';
import { fold } from '../../../shared/records/reduce';
import type { SkinTest } from '../../../shared/records/skinTest/skinTest';
import type { StationState } from '../../station/stationState';

const twoDigits = (value: number): string => String(value).padStart(2, '0');

/** Which day is it on the wall of this salon? YYYY-MM-DD, in the tablet's time zone. */
export function nameDay(atMs: number): string {
  const at = new Date(atMs);
  return `${at.getFullYear()}-${twoDigits(at.getMonth() + 1)}-${twoDigits(at.getDate())}`;
}

/** One consultation of the day: its log, and what the log says all together. */
interface DayEntry {
  readonly record: ConsultationRecord;
  readonly log: readonly ConsultationEvent[];
  /** Where it came in from a file. */
  readonly broughtIn?: ClosedRecord['broughtIn'] | undefined;
}

/** The records of one day, or several. Times are milliseconds since 1970-01-01 UTC, amounts say their unit. */
export interface DayRecords {
  /** The first day, and the last: the same where it is one. */
  readonly from: string;
  readonly day: string;
  readonly closed: readonly (DayEntry & Pick<ClosedRecord, 'how' | 'endedAtMs'>)[];
  readonly open: readonly DayEntry[];
  /** Skin tests of which something was written on this day, by whatever ticket. */
  readonly skinTests: readonly SkinTest[];
  /** Closed records whose log this station cannot read any more: handed out as they lie. */
  readonly unread: readonly ClosedRecord[];
}

/** So many days back from this moment, at the same time of day. */
export function goBackDays(atMs: number, days: number): number {
  const at = new Date(atMs);
  at.setDate(at.getDate() - days);
  return at.getTime();
}

/**
 * What closed on this day, or on the `days` up to it, in the order of closing; and, up to today, all that is still open,
 * whenever it was begun. A record that is not in both copies yet is still open.
 */
export function gatherDay(
  state: Pick<StationState, 'open' | 'closed' | 'skinTests'>,
  nowMs: number,
  { back = 0, days = 1 }: { readonly back?: number; readonly days?: number } = {},
): DayRecords {
  const day = nameDay(goBackDays(nowMs, back));
  const from = nameDay(goBackDays(nowMs, back + days - 1));
  const isOf = (atMs: number): boolean => from <= nameDay(atMs) && nameDay(atMs) <= day;
  const closedThen = state.closed
    .filter(({ id, endedAtMs }) => isOf(endedAtMs) && !state.open.has(id))
    .map((closed) => ({ closed, log: parseClosedLog(closed) }));
  return {
    from,
    day,
    closed: closedThen.flatMap(({ closed: { id, how, endedAtMs, broughtIn }, log }) =>
      log === null ? [] : [{ how, endedAtMs, record: fold(id, log), log, broughtIn }],
    ),
    open: (back === 0 ? [...state.open.values()] : []).map(({ record, log }) => ({
      record: noteMissedLooks(record, nowMs),
      log,
    })),
    skinTests: state.skinTests.filter(({ newestAtMs }) => isOf(newestAtMs)),
    unread: closedThen.flatMap(({ closed, log }) => (log === null ? [closed] : [])),
  };
}

/** What a day is handed out as, and the key to each. */
export type DayFile = 'json' | 'json.schema.json' | 'csv' | 'csv.schema.json';

/** Under which name is the day handed out? No client stands in it. */
export const nameDayFile = (
  { from, day }: Pick<DayRecords, 'from' | 'day'>,
  isDemo: boolean,
  kind: DayFile = 'json',
): string => {
  const days = from === day ? `day-${day}` : `days-${from}-to-${day}`;
  return `strandproof-${isDemo ? 'demo-' : ''}${days}.${kind}`;
};
