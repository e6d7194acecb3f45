import { endClocks } from './clock';
import type { ConsultationEvent, EventOf, EventType } from './event';
import { noteMissedLooks } from './missedLooks';
import { passDay } from './passedDay';
import { beginRecord, type ConsultationRecord } from './record';
import { answerReducers } from './reduce/answers';
import { bowlReducers } from './reduce/bowls';
import { courseReducers } from './reduce/course';
import type { Reducers } from './reduce/reducers';
import { strandReducers } from './reduce/strands';

const reducers: Reducers = { ...answerReducers, ...strandReducers, ...bowlReducers, ...courseReducers };

/** What does the record say after one more event? Pure; the event was judged before it was logged. */
export function reduce(record: ConsultationRecord, event: ConsultationEvent): ConsultationRecord {
  const today = { ...passDay(record, event.atMs), modelVersion: event.modelVersion };
  const stamp = { atMs: event.atMs, by: event.by, seq: record.nextSeq };
  const change = applyTo(today, event, stamp);
  const next = { ...today, ...change, nextSeq: stamp.seq + 1, newestAtMs: event.atMs };
  const over = next.ended === null ? next : { ...next, clocks: endClocks(next.clocks, event.atMs) };
  return noteMissedLooks(over, event.atMs);
}

const applyTo = <T extends EventType>(
  record: ConsultationRecord,
  event: EventOf<T>,
  stamp: { atMs: number; by: string; seq: number },
): Partial<ConsultationRecord> => reducers[event.type as T](record, event, stamp);

/** The record of a whole log, from its first event. */
export const fold = (id: string, log: readonly ConsultationEvent[]): ConsultationRecord =>
  log.reduce(reduce, beginRecord(id));
