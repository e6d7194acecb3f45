import { accept, type Result, refuse } from '../../shared/result';
import type { CopyFailureKind } from '../storage/copyFailure';
import type { Json } from '../storage/json';
import { packOne } from '../storage/packed';
import type { Reloaded, Restored, Store, WriteFailure } from '../storage/store';
import type { Logs } from '../storage/watcherChannel';
import { CLOSED } from './logNames';

export interface MemoryListener {
  readonly onAcknowledged: (name: string, seq: number, entry: Json) => void;
  readonly onDropped: (name: string) => void;
  readonly onRewritten: () => void;
  /** A write failed. Both copies have been read again, where they answer, and what they hold is what counts. */
  readonly onFailed: (failure: WriteFailure) => void;
  /** A month was read, and this is what it has to tell. */
  readonly onMonth: (read: Omit<Reloaded, 'entries'>) => void;
}

/** What both copies hold, as far as this window knows: each log with the entries that were acknowledged. */
export interface Memory {
  /** What was read so far. The closed months come later, one by one. */
  readonly logs: () => Logs;
  /** The closed months that are not read yet, the newest first; one that no copy answered for stays among them. */
  readonly later: () => readonly string[];
  /** Reads both copies but for the closed months; what they hold replaces what was known. */
  restore(): Promise<Restored>;
  /** Reads this month, unless it was read. Whatever is written to it waits for that. */
  readLater(name: string): Promise<void>;
  /** Takes over what another window says it holds. */
  replace(logs: Logs): void;
  /** One entry, or several in one go. Refused, `logs` says how many of them are held: the first so many, or none. */
  append(name: string, ...entries: readonly Json[]): Promise<Result<void, WriteFailure>>;
  /** Removes a log from both copies; may be done twice. */
  remove(name: string): Promise<void>;
  /**
   * Makes a log be these entries alone; none: there is no such log any more. What a try before left half done is finished.
   * Refused, it is the old log or the new one, never between.
   */
  rewrite(name: string, entries: readonly Json[]): Promise<Result<void, WriteFailure>>;
  /** Moves a log that was refused aside, untouched and named. */
  setAside(name: string, isNewer: boolean): Promise<void>;
}

/** Neither copy answers; where nobody was asked, the place was given up in between. */
const tellFailed = ({ copy, kind, name, detail }: WriteFailure): Omit<Reloaded, 'entries'> => ({
  aside: [],
  mended: [],
  troubles: copy === null ? [] : [{ copy, kind: kind as CopyFailureKind, name, detail }],
  unread: [],
});

/** Keeps what is shown in step with what is written. Checked in tests/src/station/memory.test.ts. */
export function makeMemory(store: Store, listener: MemoryListener): Memory {
  let held = new Map<string, readonly Json[]>();
  /** Not read, the newest first. */
  let untried: readonly string[] = [];
  let unread = new Set<string>();
  const reading = new Map<string, Promise<void>>();

  /** Years of closed records are kept as text. */
  const keep = (name: string, entry: Json): Json => (name.startsWith(CLOSED) ? packOne(entry) : entry);
  const hold = (name: string, entries: readonly Json[]): void => {
    unread.delete(name);
    if (entries.length === 0) held.delete(name);
    else
      held.set(
        name,
        entries.map((entry) => keep(name, entry)),
      );
  };

  const readMonth = async (name: string): Promise<void> => {
    const into = held;
    const read = await store.readPast(name);
    if (into !== held) return;
    // Another worker may answer where this one is silent; where neither does, nobody knows what lies there.
    const known = read.ok ? read : await store.reload(name);
    if (into !== held) return;
    if (known.ok) {
      untried = untried.filter((each) => each !== name);
      unread.delete(name);
      if (known.value.entries.length > 0) {
        held.set(name, read.ok ? known.value.entries : known.value.entries.map((each) => keep(name, each)));
      }
    }
    listener.onMonth(known.ok ? known.value : tellFailed(known.error));
  };

  const readLater = (name: string): Promise<void> => {
    if (!unread.has(name)) return Promise.resolve();
    const begun = reading.get(name) ?? readMonth(name).finally(() => reading.delete(name));
    reading.set(name, begun);
    return begun;
  };

  return {
    logs: () => held,
    later: () => untried,
    readLater,

    async restore() {
      const restored = await store.restore(CLOSED);
      held = new Map(restored.logs);
      unread = new Set(restored.later);
      untried = [...restored.later].reverse();
      return restored;
    },

    replace(logs) {
      held = new Map(logs);
      unread = new Set();
      untried = [];
    },

    async append(name, ...entries) {
      if (unread.has(name)) await readLater(name);
      const before = held.get(name) ?? [];
      const written = await store.append(name, before.length, ...entries);
      if (written.ok) {
        held.set(name, [...before, ...entries.map((entry) => keep(name, entry))]);
        for (const [at, entry] of entries.entries()) listener.onAcknowledged(name, before.length + at, entry);
        return accept(undefined);
      }
      const reloaded = await store.reload(name);
      if (reloaded.ok) hold(name, reloaded.value.entries);
      listener.onFailed(written.error);
      return refuse(written.error);
    },

    async remove(name) {
      if (unread.has(name)) await readLater(name);
      const removed = await store.remove(name);
      held.delete(name);
      listener.onDropped(name);
      if (!removed.ok) listener.onFailed(removed.error);
    },

    async rewrite(name, entries) {
      const written = await store.rewrite(name, entries);
      const reloaded = written.ok ? null : await store.reload(name);
      if (reloaded !== null && !reloaded.ok) return written;
      const now = reloaded?.value.entries ?? entries;
      hold(name, now);
      listener.onRewritten();
      const isDone = now.length === entries.length && (reloaded?.value.troubles ?? []).length === 0;
      return isDone ? accept(undefined) : written;
    },

    async setAside(name, isNewer) {
      const moved = await store.setAside(name, isNewer ? 'unknownVersion' : 'refused');
      held.delete(name);
      if (!moved.ok) listener.onFailed(moved.error);
    },
  };
}
