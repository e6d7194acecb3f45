import { advance, type Consultation } from '../../machines/consultation/consultation';
import { type ClassifyContext, classify, type RawEvent } from '../../shared/records/classify';
import { type ClosedRecord, closeRecord } from '../../shared/records/closedRecord';
import type { ConsultationEvent } from '../../shared/records/event';
import type { SpokenFor } from '../../shared/records/record';
import { accept, type Result, refuse } from '../../shared/result';
import type { Json } from '../storage/json';
import type { Queues } from '../storage/queue';
import type { Board } from './board';
import { isStoppedElsewhere, listSpokenFor } from './inheritsStop';
import { nameClosedLog, nameOpenLog } from './logNames';
import type { Memory } from './memory';
import { reachesHead } from './reachesHead';
import { readMonth } from './readLogs';
import { findChairRefusal } from './seats';
import { stampTime } from './stampTime';
import { isPastRead, type StationState } from './stationState';
import type { SubmitRefusal } from './submitRefusal';

/** Events and closed records are plain data by their types; the store's own type cannot be told so by an interface. */
const toJson = (entry: ConsultationEvent | ClosedRecord): Json => entry as unknown as Json;

/** What a consultation is taken through by: each tap, and its closing. */
export interface Taking {
  /** Written to both copies, or refused as a value; several in one go. */
  append(name: string, ...entries: readonly Json[]): Promise<Result<void, SubmitRefusal>>;
  /** Closed records, all of one month, go to it in one go, in both copies; that month is read first. */
  keep(...closed: readonly [ClosedRecord, ...ClosedRecord[]]): Promise<Result<void, SubmitRefusal>>;
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
  const namesStops = event.type === 'CORRECTED' && event.payload.answer === 'inherited';
  if (!reachesHead(event.type) && !namesStops) return null;
  if (!isPastRead(state)) return { kind: 'stillReading', ...state.months };
  if (namesStops) return null;
  return isStoppedElsewhere(state, record) ? { kind: 'stoppedElsewhere' } : null;
}

/** What a named correction of a stop that was handed on speaks for is the station's to say, and never a screen's. */
function nameStops(state: StationState, { record }: Consultation, raw: RawEvent) {
  return raw.type === 'CORRECTED' && raw.answers?.answer === 'inherited'
    ? ({
        raw: { ...raw, answers: { ...raw.answers, speaksFor: listSpokenFor(state, record).map(toRow) } },
        isStation: true,
      } as const)
    : { raw };
}

const toRow = ({ record, stop, entry }: SpokenFor) => ({ record, stop, entry });

/** Nothing is shown that is not written to both copies. Checked in tests/src/station/makeStation.test.ts. */
export function makeTaking(
  board: Board,
  memory: Memory,
  queues: Queues,
  now: () => number,
  onClosed: () => void,
): Taking {
  const append: Taking['append'] = async (name, ...entries) => {
    const written = await memory.append(name, ...entries);
    return written.ok ? written : refuse({ kind: 'notSaved', failure: written.error });
  };

  const keep: Taking['keep'] = (...closed) => {
    const month = nameClosedLog(closed[0].endedAtMs);
    return queues.run(month, () => append(month, ...closed.map(toJson)));
  };

  /** As it was closed here: what came in of her from another station is another log, and keeps this one from nowhere. */
  const findKept = async ({ id, endedAtMs }: ClosedRecord): Promise<ClosedRecord | undefined> => {
    const month = nameClosedLog(endedAtMs);
    await memory.readLater(month);
    return readMonth(month, memory.logs().get(month) ?? []).records.findLast(
      (each) => each.id === id && each.broughtIn === undefined,
    );
  };

  const close: Taking['close'] = async ({ id, record, log }) => {
    const closed = closeRecord(record, log);
    if (closed === null) return refuse({ kind: 'notNow' });
    if ((await findKept(closed)) === undefined) {
      const written = await keep(closed);
      if (!written.ok) return written;
    }
    const kept = (await findKept(closed)) ?? closed;
    await memory.remove(nameOpenLog(id));
    const { open: openThen, closed: closedThen } = board.read();
    const open = new Map(openThen);
    open.delete(id);
    const isShown = closedThen.some((each) => each.id === id && each.broughtIn === undefined);
    board.show({ open, closed: isShown ? closedThen : [...closedThen, kept] });
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
      const { raw: said, ...asStation } = nameStops(board.read(), before, raw);
      const context = { settings, settingsId, atMs, by, inheritsStop: false, ...from, ...asStation };
      const event = classify(before.record, said, context);
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
