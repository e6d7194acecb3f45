import { toLesson } from '../../../shared/learning/learnt';
import { listTaught, type TaughtStrand } from '../../../shared/learning/strandsTaught';
import type { DatedLesson } from '../../../shared/learning/teach';
import { type ClosedRecord, parseClosedLog } from '../../../shared/records/closedRecord';
import { msPerDay, msPerMinute } from '../../../shared/units/time';
import type { StationState } from '../stationState';

/** A closed record never changes: what it teaches is read once, and goes with it when it is erased. */
const read = new WeakMap<ClosedRecord, readonly TaughtStrand[]>();

function readClosed(closed: ClosedRecord): readonly TaughtStrand[] {
  const known = read.get(closed);
  if (known !== undefined) return known;
  const log = parseClosedLog(closed);
  const taught = log === null ? [] : listTaught({ id: closed.id, log });
  read.set(closed, taught);
  return taught;
}

/** Which day is it on the wall of this salon, counted from 1970-01-01? */
export const countDay = (atMs: number): number =>
  Math.floor((atMs - new Date(atMs).getTimezoneOffset() * msPerMinute) / msPerDay);

/**
 * What do this station's own strands of the days before teach, in the order in which it was known? In pieces, one a
 * consultation, since there may be years of them.
 * What came in from a file was tested elsewhere and teaches nothing here. What is of today counts from tomorrow on, so
 * that no chance changes while somebody is at the bar. Checked in tests/src/station/ownStrands.test.ts.
 */
export function* listOwnLessons(
  { open, closed }: Pick<StationState, 'open' | 'closed'>,
  nowMs: number,
): Generator<void, readonly DatedLesson[]> {
  const taught: TaughtStrand[] = [];
  for (const each of closed) {
    if (each.broughtIn !== undefined || open.has(each.id)) continue;
    taught.push(...readClosed(each));
    yield;
  }
  for (const { record, log } of open.values()) {
    taught.push(...listTaught({ id: record.id, log }));
    yield;
  }
  const today = countDay(nowMs);
  return taught
    .sort((one, other) => one.atMs - other.atMs)
    .map((strand) => ({ ...toLesson(strand), day: countDay(strand.atMs) }))
    .filter(({ day }) => day < today);
}
