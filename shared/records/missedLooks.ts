import { type Clock, listMissedLooks } from './clock';
import type { ConsultationRecord } from './record';

/** What was looked at by a clock, and which of its looks were missed. */
interface Looked {
  readonly clock: string | null;
  readonly missedLooksAtMs: readonly number[];
}

/** The same where nothing new was missed, so that whatever compares it sees nothing change. */
function noteIn<T extends Looked>(
  looked: readonly T[],
  clocks: readonly Clock[],
  nowMs: number,
): readonly T[] {
  const noted = looked.map((each) => {
    const clock = clocks.find(({ id }) => id === each.clock);
    const missed = clock === undefined ? each.missedLooksAtMs : listMissedLooks(clock, nowMs);
    return String(missed) === String(each.missedLooksAtMs) ? each : { ...each, missedLooksAtMs: missed };
  });
  return noted.every((each, index) => each === looked[index]) ? looked : noted;
}

/**
 * Which looks at which strand, and at which bowl on the head, were missed by now? Told by the schedule and the looks that
 * stand in the log, so nobody has to write that nobody looked; what ended keeps what it had missed.
 * Checked in tests/shared/records/missedLooks.test.ts.
 */
export function noteMissedLooks(record: ConsultationRecord, nowMs: number): ConsultationRecord {
  const strands = noteIn(record.strands, record.clocks, nowMs);
  const bowls = noteIn(record.bowls, record.clocks, nowMs);
  return strands === record.strands && bowls === record.bowls ? record : { ...record, strands, bowls };
}
