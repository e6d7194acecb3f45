import type { Consultation } from '../../../machines/consultation/consultation';
import type { ClosedRecord } from '../../../shared/records/closedRecord';
import type { ConsultationRecord } from '../../../shared/records/record';
import { fold } from '../../../shared/records/reduce';
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
  readonly log: Consultation['log'];
}

/** The records of one day as they are handed out. Times are milliseconds since 1970-01-01 UTC, amounts say their unit. */
export interface DayRecords {
  readonly v: 1;
  readonly day: string;
  readonly closed: readonly (DayEntry & Pick<ClosedRecord, 'how' | 'endedAtMs'>)[];
  readonly open: readonly DayEntry[];
}

/** What closed today, oldest first, and all that is still open, whenever it was begun. */
export function gatherDay(state: Pick<StationState, 'open' | 'closed'>, nowMs: number): DayRecords {
  const day = nameDay(nowMs);
  return {
    v: 1,
    day,
    closed: state.closed
      .filter(({ endedAtMs }) => nameDay(endedAtMs) === day)
      .map(({ id, how, endedAtMs, log }) => ({ how, endedAtMs, record: fold(id, log), log })),
    open: [...state.open.values()].map(({ record, log }) => ({ record, log })),
  };
}

/** Under which name is the day handed out? No client stands in it. */
export const nameDayFile = (day: string): string => `strandproof-day-${day}.json`;

/** The day as text: plain JSON, indented so that it can be read. */
export const writeDay = (records: DayRecords): string => `${JSON.stringify(records, null, 2)}\n`;
