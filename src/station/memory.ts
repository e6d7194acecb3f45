import { accept, type Result, refuse } from '../../shared/result';
import type { Json } from '../storage/json';
import type { Restored, Store, WriteFailure } from '../storage/store';
import type { Logs } from '../storage/watcherChannel';

export interface MemoryListener {
  readonly onAcknowledged: (name: string, seq: number, entry: Json) => void;
  readonly onDropped: (name: string) => void;
  readonly onRewritten: () => void;
  /** A write failed. Both copies have been read again, where they answer, and what they hold is what counts. */
  readonly onFailed: (failure: WriteFailure) => void;
}

/** What both copies hold, as far as this window knows: each log with the entries that were acknowledged. */
export interface Memory {
  readonly logs: () => Logs;
  /** Reads both copies; what they hold replaces what was known. */
  restore(): Promise<Restored>;
  /** Takes over what another window says it holds. */
  replace(logs: Logs): void;
  append(name: string, entry: Json): Promise<Result<void, WriteFailure>>;
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

/** Keeps what is shown in step with what is written. Checked in tests/src/station/memory.test.ts. */
export function makeMemory(store: Store, listener: MemoryListener): Memory {
  let held = new Map<string, readonly Json[]>();
  const hold = (name: string, entries: readonly Json[]): void => {
    if (entries.length === 0) held.delete(name);
    else held.set(name, entries);
    listener.onRewritten();
  };

  return {
    logs: () => held,

    async restore() {
      const restored = await store.restore();
      held = new Map(restored.logs);
      return restored;
    },

    replace(logs) {
      held = new Map(logs);
    },

    async append(name, entry) {
      const before = held.get(name) ?? [];
      const written = await store.append(name, before.length, entry);
      if (written.ok) {
        held.set(name, [...before, entry]);
        listener.onAcknowledged(name, before.length, entry);
        return accept(undefined);
      }
      const reloaded = await store.reload(name);
      if (reloaded.ok) held.set(name, reloaded.value.entries);
      listener.onFailed(written.error);
      return refuse(written.error);
    },

    async remove(name) {
      const removed = await store.remove(name);
      held.delete(name);
      listener.onDropped(name);
      if (!removed.ok) listener.onFailed(removed.error);
    },

    async rewrite(name, entries) {
      const written = await store.rewrite(name, entries);
      if (written.ok) hold(name, entries);
      if (written.ok) return written;
      const reloaded = await store.reload(name);
      if (!reloaded.ok) return refuse(written.error);
      hold(name, reloaded.value.entries);
      const isDone = reloaded.value.entries.length === entries.length && reloaded.value.troubles.length === 0;
      return isDone ? accept(undefined) : refuse(written.error);
    },

    async setAside(name, isNewer) {
      const moved = await store.setAside(name, isNewer ? 'unknownVersion' : 'refused');
      held.delete(name);
      if (!moved.ok) listener.onFailed(moved.error);
    },
  };
}
