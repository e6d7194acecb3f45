import { type ClosedRecord, parseClosedLog } from '../closedRecord';
import type { ConsultationEvent } from '../event';
import { noteMissedLooks } from '../missedLooks';
import { isPracticeId } from '../practiceId';
import type { ConsultationRecord } from '../record';
import { fold } from '../reduce';
import type { SkinTest } from '../skinTest/skinTest';

/** One consultation of the day: its log, and what the log says all together. */
export interface DayEntry {
  readonly record: ConsultationRecord;
  readonly log: readonly ConsultationEvent[];
  /** Where it came in from a file. */
  readonly broughtIn?: ClosedRecord['broughtIn'] | undefined;
  /** It was told of then, ms, and what ran then is told as it stood; lacking where it is asked at the station itself: now. */
  readonly toldAtMs?: number;
}

/** Days of the wall, YYYY-MM-DD. */
export interface Days {
  /** The first day, and the last: the same where it is one. */
  readonly from: string;
  readonly day: string;
  /** On which day does a moment lie, ms since 1970-01-01 UTC? By the clock on the wall of that salon. */
  readonly nameDay: (atMs: number) => string;
}

/** The records of one day, or several. Times are milliseconds since 1970-01-01 UTC, amounts say their unit. */
export interface DayRecords extends Days {
  readonly closed: readonly (DayEntry & Pick<ClosedRecord, 'how' | 'endedAtMs'>)[];
  readonly open: readonly DayEntry[];
  /** Something was written in them in these days, and they closed after them or are open still: an earlier day holds them too. */
  readonly goneOn: readonly DayEntry[];
  /** Skin tests of which something was written on this day, by whatever ticket. */
  readonly skinTests: readonly SkinTest[];
  /** Closed records whose log this station cannot read any more: handed out as they lie. */
  readonly unread: readonly ClosedRecord[];
}

/** Does this moment lie in these days? */
export const isWithin = ({ from, day, nameDay }: Days, atMs: number): boolean => {
  const then = nameDay(atMs);
  return from <= then && then <= day;
};

/** When was this entry of a kept log written? It is not looked into further: there may be years of them. */
const readAtMs = (entry: unknown): number =>
  Number(typeof entry === 'object' && entry !== null && 'atMs' in entry ? entry.atMs : Number.NaN);

/** What of a station stands in its days: whoever is open by her id, what closed, and every skin test. */
interface Kept {
  readonly open: ReadonlyMap<string, Omit<DayEntry, 'broughtIn'>>;
  readonly closed: readonly ClosedRecord[];
  readonly skinTests: readonly SkinTest[];
}

/**
 * What closed on these days, in the order of closing; up to today, all that is still open, whenever it was begun; and of
 * earlier days also what was written then and closed later. A record that is not in both copies yet is still open. Nobody who
 * was practised with is of any day.
 */
export function gatherDay(kept: Kept, nowMs: number, days: Days): DayRecords {
  const isOf = (atMs: number): boolean => isWithin(days, atMs);
  const wasWorkedOn = (log: readonly unknown[]): boolean => log.some((entry) => isOf(readAtMs(entry)));
  const allClosed = kept.closed.filter(({ id }) => !kept.open.has(id) && !isPracticeId(id));
  const closedThen = allClosed
    .filter(({ endedAtMs }) => isOf(endedAtMs))
    .map((closed) => ({ closed, log: parseClosedLog(closed) }));
  const closedLater = allClosed.filter(
    ({ endedAtMs, log }) => days.nameDay(endedAtMs) > days.day && wasWorkedOn(log),
  );
  const openNow = [...kept.open.values()].filter(({ record }) => !isPracticeId(record.id));
  const open = openNow.map(({ record, log, toldAtMs = nowMs }) => ({
    record: noteMissedLooks(record, toldAtMs),
    log,
    toldAtMs,
  }));
  const isUpToNow = days.nameDay(nowMs) <= days.day;
  return {
    ...days,
    closed: closedThen.flatMap(({ closed: { id, how, endedAtMs, broughtIn }, log }) =>
      log === null ? [] : [{ how, endedAtMs, record: fold(id, log), log, broughtIn }],
    ),
    open: isUpToNow ? open : [],
    goneOn: [
      ...closedLater.flatMap((closed) => {
        const log = parseClosedLog(closed);
        return log === null ? [] : [{ record: fold(closed.id, log), log, broughtIn: closed.broughtIn }];
      }),
      ...(isUpToNow ? [] : open.filter(({ log }) => wasWorkedOn(log))),
    ],
    skinTests: kept.skinTests.filter(({ id, newestAtMs }) => isOf(newestAtMs) && !isPracticeId(id)),
    unread: closedThen.flatMap(({ closed, log }) => (log === null ? [closed] : [])),
  };
}

/** Everybody of these days: who closed, who is open, and who went on after them. */
export const listEntries = ({
  closed,
  goneOn,
  open,
}: Pick<DayRecords, 'closed' | 'goneOn' | 'open'>): readonly DayEntry[] => [...closed, ...goneOn, ...open];
