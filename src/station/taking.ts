import { advance, type Consultation } from '../../machines/consultation/consultation';
import { type ClassifyContext, classify, type RawEvent } from '../../shared/records/classify';
import { type ClosedRecord, closeRecord } from '../../shared/records/closedRecord';
import type { ConsultationEvent } from '../../shared/records/event';
import { accept, type Result, refuse } from '../../shared/result';
import type { Json } from '../storage/json';
import type { Queues } from '../storage/queue';
import type { Board } from './board';
import { isStoppedElsewhere } from './inheritsStop';
import { nameClosedLog, nameOpenLog } from './logNames';
import type { Memory } from './memory';
import { reachesHead } from './reachesHead';
import { findChairRefusal } from './seats';
import { stampTime } from './stampTime';
import type { StationState } from './stationState';
import type { SubmitRefusal } from './submitRefusal';

/** Events and closed records are plain data by their types; the store's own type cannot be told so by an interface. */
const toJson = (entry: ConsultationEvent | ClosedRecord): Json => entry as unknown as Json;

/** What a consultation is taken through by: each tap, and its closing. */
export interface Taking {
  /** Written to both copies, or refused as a value. */
  append(name: string, entry: Json): Promise<Result<void, SubmitRefusal>>;
  /** A closed record goes to its month, in both copies. */
  keep(closed: ClosedRecord): Promise<Result<void, SubmitRefusal>>;
  /**
   * Judged, let through by the chart, written to both copies, and only then shown. `isStation`: the station itself says
   * it, and may give what no screen gives.
   */
  take(
    before: Consultation,
    by: string,
    raw: RawEvent,
    from?: Partial<Pick<ClassifyContext, 'inheritsStop' | 'lastTime' | 'isStation'>>,
  ): Promise<Result<void, SubmitRefusal>>;
  /** The record first, the open log second; broken off in between, another try or the next start finishes it. */
  close(consultation: Consultation): Promise<Result<void, SubmitRefusal>>;
}

/** What does this event come up against in the other consultations? */
function findStationRefusal(
  state: StationState,
  { record }: Consultation,
  event: ConsultationEvent,
): SubmitRefusal | null {
  if (event.type === 'OPENED') return findChairRefusal(state, event.payload.chair);
  return reachesHead(event.type) && isStoppedElsewhere(state, record) ? { kind: 'stoppedElsewhere' } : null;
}

/** Nothing is shown that is not written to both copies. Checked in tests/src/station/makeStation.test.ts. */
export function makeTaking(
  board: Board,
  memory: Memory,
  queues: Queues,
  now: () => number,
  onClosed: () => void,
): Taking {
  const append: Taking['append'] = async (name, entry) => {
    const written = await memory.append(name, entry);
    return written.ok ? written : refuse({ kind: 'notSaved', failure: written.error });
  };

  const keep: Taking['keep'] = (closed) => {
    const month = nameClosedLog(closed.endedAtMs);
    return queues.run(month, () => append(month, toJson(closed)));
  };

  const close: Taking['close'] = async ({ id, record, log }) => {
    const closed = closeRecord(record, log);
    if (closed === null) return refuse({ kind: 'notNow' });
    const isKept = board.read().closed.some((each) => each.id === id);
    if (!isKept) {
      const written = await keep(closed);
      if (!written.ok) return written;
    }
    await memory.remove(nameOpenLog(id));
    const { open: openThen, closed: closedThen } = board.read();
    const open = new Map(openThen);
    open.delete(id);
    board.show({ open, closed: isKept ? closedThen : [...closedThen, closed] });
    onClosed();
    return accept(undefined);
  };

  return {
    append,
    keep,
    close,
    async take(before, by, raw, from = {}) {
      const { id: settingsId, settings } = board.read().settings;
      const atMs = raw.type === 'CLOCK_CORRECTED' ? now() : stampTime(now(), before.record.newestAtMs);
      const context = { settings, settingsId, atMs, by, inheritsStop: false, ...from };
      const event = classify(before.record, raw, context);
      if (!event.ok) return event;
      const refusal = findStationRefusal(board.read(), before, event.value);
      if (refusal !== null) return refuse(refusal);
      const after = advance(before, event.value);
      if (!after.ok) return refuse({ kind: 'notNow' });
      const written = await append(nameOpenLog(before.id), toJson(event.value));
      if (!written.ok) return written;
      board.show({ open: new Map(board.read().open).set(before.id, after.value) });
      // What was said is kept; a record that cannot be closed now stays on the bar and is closed by another try.
      if (after.value.record.ended !== null) await close(after.value);
      return accept(undefined);
    },
  };
}
