import { type Accessor, createEffect, createSignal, onCleanup } from 'solid-js';
import { readBuildName } from './buildName';
import { holdInUse, makeUpdates, type Taken, type UpdateLocks, type UpdateWorkers } from './updates';

/** Which build runs on this tablet, and which one waits to be taken. */
export interface UpdatesInUse {
  /** Empty where the page is being worked on. */
  readonly build: string;
  /** All of it is here; empty where it does not say which it is. null: none waits. */
  readonly waiting: Accessor<string | null>;
  /** Nobody wants to be asked about that one again, until the station is opened anew. */
  readonly isPutOff: Accessor<boolean>;
  readonly putOff: () => void;
  readonly take: () => Promise<Taken>;
  /** Asks the server now. Answers whether it was reached. */
  readonly look: () => Promise<boolean>;
  /** While this answers yes, no window of this tablet takes a newer build. */
  readonly useWhile: (isInUse: Accessor<boolean>) => void;
}

/** What a browser has of it. */
export interface UpdatesParts {
  readonly build: string;
  readonly workers: UpdateWorkers;
  readonly locks: UpdateLocks;
  readonly reload: () => void;
}

/** Nothing where the page is not kept, and so no newer one can wait: it is being worked on, or the browser has no such thing. */
export const findUpdatesParts = (): UpdatesParts | null =>
  import.meta.env.PROD && 'serviceWorker' in navigator && 'locks' in navigator
    ? {
        build: readBuildName(),
        workers: navigator.serviceWorker as UpdateWorkers,
        locks: navigator.locks as UpdateLocks,
        reload: () => location.reload(),
      }
    : null;

/** Lives as long as the page. Checked in tests/browser/updates.test.ts. */
export function createUpdates(parts: UpdatesParts | null): UpdatesInUse | undefined {
  if (parts === null) return undefined;
  const [waiting, setWaiting] = createSignal<string | null>(null);
  const [putOffBuild, setPutOff] = createSignal<string | null>(null);
  const updates = makeUpdates(parts.workers, parts.locks, parts.reload, setWaiting);
  return {
    build: parts.build,
    waiting,
    isPutOff: () => waiting() !== null && waiting() === putOffBuild(),
    putOff: () => setPutOff(waiting()),
    ...updates,
    useWhile: (isInUse) =>
      createEffect(() => {
        if (isInUse()) onCleanup(holdInUse(parts.locks));
      }),
  };
}
