import * as v from 'valibot';
import { advance, beginConsultation, type Consultation } from '../../machines/consultation/consultation';
import { type ClassifyRefusal, classify, type RawEvent } from '../../shared/records/classify';
import { closeRecord } from '../../shared/records/closedRecord';
import type { RawForm } from '../../shared/records/readForm';
import { defaultSettings, settingsSchema } from '../../shared/records/settings';
import { hasStandingStop } from '../../shared/records/standingStop';
import { formTicketKey } from '../../shared/records/ticket';
import { accept, type Result, refuse } from '../../shared/result';
import type { Json } from '../storage/json';
import { makeQueues } from '../storage/queue';
import type { Store, WriteFailure } from '../storage/store';
import type { Logs } from '../storage/watcherChannel';
import type { Notice } from './notice';
import { nameClosedLog, nameOpenLog, readLogs, SETTINGS_LOG } from './readLogs';
import { findNewestAtMs, type StationState } from './stationState';

/** Why the station did not take an answer. */
export type SubmitRefusal =
  | ClassifyRefusal
  | { readonly kind: 'notNow' }
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
  stopWriting(): Promise<void>;
  /** Opens a consultation: its first event. Answers its id. */
  open(by: string, answers: RawForm): Promise<Result<string, SubmitRefusal>>;
  /** One tap: judged, let through by the chart, written to both copies, and only then shown. */
  submit(id: string, by: string, raw: RawEvent): Promise<Result<void, SubmitRefusal>>;
  /** Keeps a new edition of the settings; those that events were judged under stay kept for ever. */
  saveSettings(by: string, settings: unknown): Promise<Result<void, SubmitRefusal>>;
  /** The tablet's clock was set back: says so in every consultation whose newest entry lies ahead of it. */
  correctClocks(by: string): Promise<void>;
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

/** The station without its screens. Nothing is shown that is not written to both copies. */
export function makeStation(parts: StationParts): Station {
  const { store, now, publish } = parts;
  const queues = makeQueues();
  let state = firstState;
  let logs: Map<string, readonly Json[]> = new Map();

  const show = (change: Partial<StationState>): void => {
    state = { ...state, ...change };
    publish(state);
  };
  const note = (notice: Notice): void => show({ notices: [...state.notices, notice] });

  /** Appends to both copies. After a failure both are read again, and what they hold is what is shown. */
  async function append(name: string, entry: Json): Promise<Result<void, SubmitRefusal>> {
    const held = logs.get(name) ?? [];
    const written = await store.append(name, held.length, entry);
    if (written.ok) {
      logs.set(name, [...held, entry]);
      parts.onAcknowledged(name, held.length, entry);
      return accept(undefined);
    }
    note({ kind: 'notSaved', failure: written.error });
    const reloaded = await store.reload(name);
    if (reloaded.ok) {
      logs.set(name, reloaded.value.entries);
      showLogs();
    }
    return refuse({ kind: 'notSaved', failure: written.error });
  }

  function showLogs(): ReturnType<typeof readLogs> {
    const read = readLogs(logs);
    show({ settings: read.settings, open: read.open, closed: read.closed });
    return read;
  }

  const showConsultation = (consultation: Consultation): void =>
    show({ open: new Map(state.open).set(consultation.id, consultation) });

  const inheritsStop = (ticket: string): boolean => {
    const key = formTicketKey(ticket);
    return (
      state.closed.some((closed) => closed.ticketKey === key && closed.hasStandingStop) ||
      [...state.open.values()].some(
        ({ record }) => formTicketKey(record.ticket) === key && hasStandingStop(record),
      )
    );
  };

  async function take(
    before: Consultation,
    by: string,
    raw: RawEvent,
    inherits: boolean,
  ): Promise<Result<void, SubmitRefusal>> {
    const { id: settingsId, settings } = state.settings;
    const context = { settings, settingsId, atMs: now(), by, inheritsStop: inherits };
    const event = classify(before.record, raw, context);
    if (!event.ok) return event;
    const after = advance(before, event.value);
    if (!after.ok) return refuse({ kind: after.error });
    const written = await append(nameOpenLog(before.id), event.value as unknown as Json);
    if (!written.ok) return written;
    showConsultation(after.value);
    if (after.value.record.ended !== null) await close(after.value);
    return accept(undefined);
  }

  /** The record first, the open log second; done again after a power cut in between, it finishes. */
  async function close(consultation: Consultation): Promise<void> {
    const closed = closeRecord(consultation.record, consultation.log);
    if (closed === null) return;
    const month = nameClosedLog(closed.endedAtMs);
    const isKept = state.closed.some(({ id }) => id === closed.id);
    if (!isKept) {
      const written = await queues.run(month, () => append(month, closed as unknown as Json));
      if (!written.ok) return;
    }
    const name = nameOpenLog(closed.id);
    const removed = await store.remove(name);
    if (!removed.ok) note({ kind: 'notSaved', failure: removed.error });
    logs.delete(name);
    parts.onDropped(name);
    const open = new Map(state.open);
    open.delete(closed.id);
    show({ open, closed: isKept ? state.closed : [...state.closed, closed] });
  }

  const mayWrite = (): boolean => state.mode === 'writing';

  const submit: Station['submit'] = (id, by, raw) =>
    queues.run(id, async () => {
      const consultation = state.open.get(id);
      if (!mayWrite()) return refuse({ kind: 'notWriting' });
      return consultation === undefined ? refuse({ kind: 'notNow' }) : take(consultation, by, raw, false);
    });

  return {
    async startWriting() {
      show({ mode: 'starting' });
      const restored = await store.restore();
      logs = new Map(restored.logs);
      const read = showLogs();
      const notices: Notice[] = [
        ...restored.aside.map((each) => ({ kind: 'setAside', note: each }) as const),
        ...restored.mended.map((each) => ({ kind: 'mended', note: each }) as const),
        ...restored.troubles.map((trouble) => ({ kind: 'trouble', trouble }) as const),
        ...restored.unread.map((each) => ({ kind: 'unread', note: each }) as const),
        ...read.notices,
      ];
      for (const { name, isNewer } of read.refused) {
        const moved = await store.setAside(name, isNewer ? 'unknownVersion' : 'refused');
        if (moved.ok) logs.delete(name);
        else notices.push({ kind: 'notSaved', failure: moved.error });
      }
      const isStoreThere = restored.troubles.every(({ name }) => name !== null);
      show({ mode: isStoreThere ? 'writing' : 'noStore', notices: [...state.notices, ...notices] });
      if (!isStoreThere) return;
      if (!logs.has(SETTINGS_LOG)) await append(SETTINGS_LOG, { settings: defaultSettings });
      for (const consultation of state.open.values()) {
        if (consultation.record.ended !== null) await close(consultation);
      }
    },

    watch(seen) {
      logs = new Map(seen);
      const read = readLogs(logs);
      show({ mode: 'watching', settings: read.settings, open: read.open, closed: read.closed });
    },

    async stopWriting() {
      show({ mode: 'watching' });
      await queues.drain();
      await store.release();
    },

    open(by, answers) {
      const id = parts.makeId();
      const { ticket } = answers;
      const inherits = inheritsStop(typeof ticket === 'string' ? ticket : '');
      return queues.run(id, async () => {
        if (!mayWrite()) return refuse({ kind: 'notWriting' });
        const taken = await take(beginConsultation(id), by, { type: 'OPENED', answers }, inherits);
        return taken.ok ? accept(id) : taken;
      });
    },

    submit,

    saveSettings(by, settings) {
      return queues.run(SETTINGS_LOG, async () => {
        if (!mayWrite()) return refuse({ kind: 'notWriting' });
        const read = v.safeParse(settingsSchema, settings);
        if (!read.success) return refuse({ kind: 'badSettings', path: v.getDotPath(read.issues[0]) ?? '' });
        const written = await append(SETTINGS_LOG, { settings: read.output, by, atMs: now() });
        if (written.ok) showLogs();
        return written;
      });
    },

    async correctClocks(by) {
      const newestAtMs = findNewestAtMs(state);
      const shiftMs = now() - newestAtMs;
      if (shiftMs >= 0) return;
      const answers = { shiftMs: String(shiftMs) };
      await Promise.all(
        [...state.open.keys()].map((id) => submit(id, by, { type: 'CLOCK_CORRECTED', answers })),
      );
    },

    readLogs: () => logs,
    readState: () => state,
    note,
    dismiss: (notice) => show({ notices: state.notices.filter((each) => each !== notice) }),
  };
}
