import * as v from 'valibot';
import { advance, beginConsultation, type Consultation } from '../../machines/consultation/consultation';
import { classify, type RawEvent } from '../../shared/records/classify';
import { type ClosedRecord, closeRecord } from '../../shared/records/closedRecord';
import type { ClassifyRefusal } from '../../shared/records/conflict';
import type { ConsultationEvent } from '../../shared/records/event';
import type { RawForm } from '../../shared/records/readForm';
import { defaultSettings, settingsSchema } from '../../shared/records/settings';
import { accept, type Result, refuse } from '../../shared/result';
import type { Json } from '../storage/json';
import { makeQueues } from '../storage/queue';
import type { Store, WriteFailure } from '../storage/store';
import type { Logs } from '../storage/watcherChannel';
import { inheritsStop, isStoppedElsewhere } from './inheritsStop';
import { makeMemory } from './memory';
import { listNotices, type Notice } from './notice';
import { nameClosedLog, nameOpenLog, type ReadLogs, readLogs, SETTINGS_LOG } from './readLogs';
import { findNewestAtMs, type StationState } from './stationState';

/** Why the station did not take an answer. */
export type SubmitRefusal =
  | ClassifyRefusal
  | { readonly kind: 'notNow' }
  | { readonly kind: 'stoppedElsewhere' }
  | { readonly kind: 'notWriting' }
  | { readonly kind: 'badSettings'; readonly path: string }
  | { readonly kind: 'notSaved'; readonly failure: WriteFailure };

export interface StationParts {
  readonly store: Store;
  readonly now: () => number;
  readonly makeId: () => string;
  readonly publish: (state: StationState) => void;
  /** What other windows are to hear; the store's own acknowledgements, in their order. */
  readonly onAcknowledged: (name: string, seq: number, entry: Json) => void;
  readonly onDropped: (name: string) => void;
}

export interface Station {
  /** Takes the writer's part: restores both copies, folds every log, sets aside what is not what it claims to be. */
  startWriting(): Promise<void>;
  /** Shows what another window writes. */
  watch(logs: Logs): void;
  /** Gives the writer's part up, after all that is queued is written. */
  stopWriting(then?: 'watching' | 'noStore'): Promise<void>;
  /** Tries once more to write the record of a consultation that has ended, where the store refused it before. */
  finishClosing(id: string): Promise<Result<void, SubmitRefusal>>;
  /** Opens a consultation: its first event. Answers its id. */
  open(by: string, answers: RawForm): Promise<Result<string, SubmitRefusal>>;
  /** One tap: judged, let through by the chart, written to both copies, and only then shown. */
  submit(id: string, by: string, raw: RawEvent): Promise<Result<void, SubmitRefusal>>;
  /** Keeps a new edition of the settings; those that events were judged under stay kept for ever. */
  saveSettings(by: string, settings: unknown): Promise<Result<void, SubmitRefusal>>;
  /** The tablet's clock was set back from `seenMs`, the last time it was seen to show: says so in every consultation. */
  correctClocks(by: string, seenMs: number): Promise<Result<void, SubmitRefusal>>;
  /** All that is held, by log: what a newly opened window asks for. */
  readLogs(): Logs;
  /** The newest published state. */
  readState(): StationState;
  note(notice: Notice): void;
  dismiss(notice: Notice): void;
}

const firstState: StationState = {
  mode: 'starting',
  settings: { id: 0, settings: defaultSettings },
  open: new Map(),
  closed: [],
  notices: [],
};

/** Events and closed records are plain data by their types; the store's own type cannot be told so by an interface. */
const toJson = (entry: ConsultationEvent | ClosedRecord): Json => entry as unknown as Json;

/** The station without its screens. Nothing is shown that is not written to both copies. */
export function makeStation(parts: StationParts): Station {
  const { store, now, publish } = parts;
  const queues = makeQueues();
  let state = firstState;

  const show = (change: Partial<StationState>): void => {
    state = { ...state, ...change };
    publish(state);
  };
  const note = (...notices: readonly Notice[]): void => show({ notices: [...state.notices, ...notices] });

  const memory = makeMemory(store, {
    onAcknowledged: parts.onAcknowledged,
    onDropped: parts.onDropped,
    onFailed: (failure) => {
      showLogs();
      note({ kind: 'notSaved', failure });
    },
  });

  function showLogs(): ReadLogs {
    const read = readLogs(memory.logs());
    show({ settings: read.settings, open: read.open, closed: read.closed });
    return read;
  }

  const append = async (name: string, entry: Json): Promise<Result<void, SubmitRefusal>> => {
    const written = await memory.append(name, entry);
    return written.ok ? written : refuse({ kind: 'notSaved', failure: written.error });
  };

  /** Judged, let through by the chart, written to both copies, and only then shown. */
  async function take(
    before: Consultation,
    by: string,
    raw: RawEvent,
    inheritsStop: boolean,
  ): Promise<Result<void, SubmitRefusal>> {
    const { id: settingsId, settings } = state.settings;
    const event = classify(before.record, raw, { settings, settingsId, atMs: now(), by, inheritsStop });
    if (!event.ok) return event;
    const reachesHead = raw.type === 'BOWL_WEIGHED' || raw.type === 'BOWL_APPLIED';
    if (reachesHead && isStoppedElsewhere(state, before.record)) return refuse({ kind: 'stoppedElsewhere' });
    const after = advance(before, event.value);
    if (!after.ok) return refuse({ kind: 'notNow' });
    const written = await append(nameOpenLog(before.id), toJson(event.value));
    if (!written.ok) return written;
    show({ open: new Map(state.open).set(before.id, after.value) });
    // What was said is kept; a record that cannot be closed now stays on the bar and is closed by another try.
    if (after.value.record.ended !== null) await close(after.value);
    return accept(undefined);
  }

  /** The record first, the open log second; broken off in between, another try or the next start finishes it. */
  async function close({ id, record, log }: Consultation): Promise<Result<void, SubmitRefusal>> {
    const closed = closeRecord(record, log);
    if (closed === null) return refuse({ kind: 'notNow' });
    const month = nameClosedLog(closed.endedAtMs);
    const isKept = state.closed.some((each) => each.id === id);
    if (!isKept) {
      const written = await queues.run(month, () => append(month, toJson(closed)));
      if (!written.ok) return written;
    }
    await memory.remove(nameOpenLog(id));
    const open = new Map(state.open);
    open.delete(id);
    show({ open, closed: isKept ? state.closed : [...state.closed, closed] });
    return accept(undefined);
  }

  /** Refused at the door or taken to the end: what stands in line is written even when the place is given up. */
  const enqueue = async <T>(
    line: string,
    work: () => Promise<Result<T, SubmitRefusal>>,
  ): Promise<Result<T, SubmitRefusal>> =>
    state.mode === 'writing' ? queues.run(line, work) : refuse({ kind: 'notWriting' });

  const submit: Station['submit'] = (id, by, raw) =>
    enqueue(id, async () => {
      const consultation = state.open.get(id);
      return consultation === undefined ? refuse({ kind: 'notNow' }) : take(consultation, by, raw, false);
    });

  return {
    submit,

    finishClosing: (id) =>
      enqueue(id, async () => {
        const consultation = state.open.get(id);
        return consultation === undefined ? accept(undefined) : close(consultation);
      }),

    open(by, answers) {
      const id = parts.makeId();
      const { ticket } = answers;
      const inherits = inheritsStop(state, typeof ticket === 'string' ? ticket : '');
      return enqueue(id, async () => {
        const taken = await take(beginConsultation(id), by, { type: 'OPENED', answers }, inherits);
        return taken.ok ? accept(id) : taken;
      });
    },

    async startWriting() {
      show({ mode: 'starting' });
      const restored = await memory.restore();
      const read = showLogs();
      note(...listNotices(restored), ...read.notices);
      for (const { name, isNewer } of read.refused) await memory.setAside(name, isNewer);
      const isStoreThere = restored.troubles.every(({ name }) => name !== null);
      if (!isStoreThere) return show({ mode: 'noStore' });
      if (!memory.logs().has(SETTINGS_LOG)) await append(SETTINGS_LOG, { settings: defaultSettings });
      for (const consultation of state.open.values()) await close(consultation);
      show({ mode: 'writing' });
    },

    watch(logs) {
      memory.replace(logs);
      showLogs();
      show({ mode: 'watching' });
    },

    async stopWriting(then = 'watching') {
      show({ mode: then });
      await queues.drain();
      await store.release();
    },

    saveSettings: (by, settings) =>
      enqueue(SETTINGS_LOG, async () => {
        const read = v.safeParse(settingsSchema, settings);
        if (!read.success) return refuse({ kind: 'badSettings', path: v.getDotPath(read.issues[0]) ?? '' });
        const written = await append(SETTINGS_LOG, { settings: read.output, by, atMs: now() });
        if (written.ok) showLogs();
        return written;
      }),

    async correctClocks(by, seenMs) {
      const shiftMs = now() - Math.max(seenMs, findNewestAtMs(state));
      if (shiftMs >= 0) return accept(undefined);
      const raw: RawEvent = { type: 'CLOCK_CORRECTED', answers: { shiftMs: String(shiftMs) } };
      const said = await Promise.all([...state.open.keys()].map((id) => submit(id, by, raw)));
      return said.find(({ ok }) => !ok) ?? accept(undefined);
    },

    readLogs: memory.logs,
    readState: () => state,
    note,
    dismiss: (notice) => show({ notices: state.notices.filter((each) => each !== notice) }),
  };
}
