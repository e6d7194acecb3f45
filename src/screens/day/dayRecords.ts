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
export interface DayEntry {
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
  /** Something was written in them in these days, and they closed after them or are open still: an earlier day holds them too. */
  readonly goneOn: readonly DayEntry[];
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

/** Does this moment lie in these days? */
export const isWithin = ({ from, day }: Pick<DayRecords, 'from' | 'day'>, atMs: number): boolean =>
  from <= nameDay(atMs) && nameDay(atMs) <= day;

/** When was this entry of a kept log written? It is not looked into further: there may be years of them. */
const readAtMs = (entry: unknown): number =>
  Number(typeof entry === 'object' && entry !== null && 'atMs' in entry ? entry.atMs : Number.NaN);

/**
 * What closed on this day, or on the `days` up to it, in the order of closing; up to today, all that is still open, whenever
 * it was begun; and of earlier days also what was written then and closed later. A record that is not in both copies yet is
 * still open.
 */
export function gatherDay(
  state: Pick<StationState, 'open' | 'closed' | 'skinTests'>,
  nowMs: number,
  { back = 0, days = 1 }: { readonly back?: number; readonly days?: number } = {},
): DayRecords {
  const day = nameDay(goBackDays(nowMs, back));
  const from = nameDay(goBackDays(nowMs, back + days - 1));
  const isOf = (atMs: number): boolean => isWithin({ from, day }, atMs);
  const wasWorkedOn = (log: readonly unknown[]): boolean => log.some((entry) => isOf(readAtMs(entry)));
  const allClosed = state.closed.filter(({ id }) => !state.open.has(id));
  const closedThen = allClosed
    .filter(({ endedAtMs }) => isOf(endedAtMs))
    .map((closed) => ({ closed, log: parseClosedLog(closed) }));
  const closedLater = allClosed.filter(({ endedAtMs, log }) => nameDay(endedAtMs) > day && wasWorkedOn(log));
  const open = [...state.open.values()].map(({ record, log }) => ({
    record: noteMissedLooks(record, nowMs),
    log,
  }));
  return {
    from,
    day,
    closed: closedThen.flatMap(({ closed: { id, how, endedAtMs, broughtIn }, log }) =>
      log === null ? [] : [{ how, endedAtMs, record: fold(id, log), log, broughtIn }],
    ),
    open: back === 0 ? open : [],
    goneOn: [
      ...closedLater.flatMap((closed) => {
        const log = parseClosedLog(closed);
        return log === null ? [] : [{ record: fold(closed.id, log), log, broughtIn: closed.broughtIn }];
      }),
      ...(back === 0 ? [] : open.filter(({ log }) => wasWorkedOn(log))),
    ],
    skinTests: state.skinTests.filter(({ newestAtMs }) => isOf(newestAtMs)),
    unread: closedThen.flatMap(({ closed, log }) => (log === null ? [closed] : [])),
  };
}

/** Everybody of these days: who closed, who is open, and who went on after them. */
export const listEntries = ({
  closed,
  goneOn,
  open,
}: Pick<DayRecords, 'closed' | 'goneOn' | 'open'>): readonly DayEntry[] => [...closed, ...goneOn, ...open];

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
