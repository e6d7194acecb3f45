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
}

/** The records of one day as they are handed out. Times are milliseconds since 1970-01-01 UTC, amounts say their unit. */
export interface DayRecords {
  readonly v: 1;
  readonly day: string;
  readonly closed: readonly (DayEntry & Pick<ClosedRecord, 'how' | 'endedAtMs'>)[];
  readonly open: readonly DayEntry[];
  /** Skin tests of which something was written on this day, by whatever ticket. */
  readonly skinTests: readonly SkinTest[];
  /** Closed records whose log this station cannot read any more: handed out as they lie. */
  readonly unread: readonly ClosedRecord[];
}

/**
 * What closed today, in the order of closing, and all that is still open, whenever it was begun. A record that is not
 * in both copies yet is still open.
 */
export function gatherDay(
  state: Pick<StationState, 'open' | 'closed' | 'skinTests'>,
  nowMs: number,
): DayRecords {
  const day = nameDay(nowMs);
  const today = state.closed
    .filter(({ id, endedAtMs }) => nameDay(endedAtMs) === day && !state.open.has(id))
    .map((closed) => ({ closed, log: parseClosedLog(closed) }));
  return {
    v: 1,
    day,
    closed: today.flatMap(({ closed: { id, how, endedAtMs }, log }) =>
      log === null ? [] : [{ how, endedAtMs, record: fold(id, log), log }],
    ),
    open: [...state.open.values()].map(({ record, log }) => ({
      record: noteMissedLooks(record, nowMs),
      log,
    })),
    skinTests: state.skinTests.filter(({ newestAtMs }) => nameDay(newestAtMs) === day),
    unread: today.flatMap(({ closed, log }) => (log === null ? [closed] : [])),
  };
}

/** Under which name is the day handed out? No client stands in it. */
export const nameDayFile = (
  day: string,
  isDemo: boolean,
  kind: 'json' | 'csv' | 'schema.json' = 'json',
): string => `strandproof-${isDemo ? 'demo-' : ''}day-${day}.${kind}`;

/** The day as text: plain JSON, indented so that it can be read; a day of the invented salon says first that it is one. */
export const writeDay = (records: DayRecords, isDemo: boolean): string =>
  `${JSON.stringify(isDemo ? { demo: true, ...records } : records, null, 2)}\n`;
