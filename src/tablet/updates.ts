/** What is asked of a service worker; it answers the first through the port that comes with it. */
export type AskedOfWorker = 'SAY_BUILD' | 'TAKE_OVER';

/** As much of a service worker as is needed. */
interface UpdateWorker {
  postMessage(asked: AskedOfWorker, ports?: Transferable[]): void;
  addEventListener(type: 'statechange', listener: () => void): void;
}

interface UpdateRegistration {
  readonly waiting: UpdateWorker | null;
  readonly installing: UpdateWorker | null;
  addEventListener(type: 'updatefound', listener: () => void): void;
  update(): Promise<unknown>;
}

/** As much of `navigator.serviceWorker` as is needed. */
export interface UpdateWorkers {
  readonly controller: unknown;
  readonly ready: Promise<UpdateRegistration>;
  addEventListener(type: 'controllerchange', listener: () => void): void;
}

/** As much of `navigator.locks` as is needed. */
export interface UpdateLocks {
  request<T>(
    name: string,
    options: { readonly mode?: 'exclusive' | 'shared'; readonly ifAvailable?: boolean },
    held: (lock: unknown) => Promise<T>,
  ): Promise<T>;
}

/** Held, shared, by every window that must not be loaded anew now: of whatever edition, since all of them are. */
const IN_USE = 'strandproof-in-use';

/** So often the server is asked for a newer build, ms. Assumed because a station on a wall is not opened anew for months, and a build is no hurry. */
export const ASSUMED_LOOK_EVERY_MS = 3_600_000;

/** So long a build may take to say which one it is, or to take over, ms. Assumed because it answers in a few. */
export const ASSUMED_ANSWER_MS = 10_000;

/** `inUse`: another window is in use. `notTaken`: the browser did not put it in place; nothing has changed. */
export type Taken = 'taken' | 'inUse' | 'notTaken';

export interface Updates {
  /** Puts the build that waits in place, and loads every window anew; refused while one of them is in use. */
  take(): Promise<Taken>;
  /** Asks the server now. Answers whether it was reached. */
  look(): Promise<boolean>;
}

const wait = (ms: number): Promise<null> => new Promise((resolve) => setTimeout(() => resolve(null), ms));

/** Which build is this? Empty where it does not say. */
const askBuild = async (worker: UpdateWorker): Promise<string> => {
  const { port1, port2 } = new MessageChannel();
  const answered = new Promise<unknown>((resolve) => {
    port1.onmessage = ({ data }) => resolve(data);
  });
  worker.postMessage('SAY_BUILD', [port2]);
  const build = await Promise.race([answered, wait(ASSUMED_ANSWER_MS)]);
  port1.close();
  return typeof build === 'string' ? build : '';
};

/**
 * Is there a newer build? `onWaiting` is told once all of it is here, and null when none waits: what is fetched in part, or
 * does not belong together, never gets so far. Nothing changes before `take`; then every window is loaded anew, since the
 * files of the old build go. Checked in tests/src/tablet/updates.test.ts and tests/browser/updates.test.ts.
 */
export function makeUpdates(
  workers: UpdateWorkers,
  locks: UpdateLocks,
  reload: () => void,
  onWaiting: (build: string | null) => void,
): Updates {
  let told: UpdateWorker | null = null;

  const tell = async (): Promise<void> => {
    const { waiting } = await workers.ready;
    if (waiting === told) return;
    told = waiting;
    const build = waiting === null ? null : await askBuild(waiting);
    // Another one may have come since it was asked.
    if (told === waiting) onWaiting(build);
  };

  void workers.ready.then((registration) => {
    registration.addEventListener('updatefound', () => {
      registration.installing?.addEventListener('statechange', () => void tell());
    });
    void tell();
  });

  // A page that had none yet is the build that takes it over, and stays as it is.
  let hadBuild = workers.controller !== null;
  workers.addEventListener('controllerchange', () => {
    if (hadBuild) reload();
    hadBuild = true;
  });

  const look = async (): Promise<boolean> => {
    try {
      await (await workers.ready).update();
      return true;
    } catch {
      return false;
    }
  };
  setInterval(() => void look(), ASSUMED_LOOK_EVERY_MS);

  return {
    look,
    take: () =>
      locks.request(IN_USE, { ifAvailable: true }, async (lock): Promise<Taken> => {
        if (lock === null) return 'inUse';
        const { waiting } = await workers.ready;
        if (waiting === null) return 'notTaken';
        const inPlace = new Promise<Taken>((resolve) =>
          workers.addEventListener('controllerchange', () => resolve('taken')),
        );
        const isOfNone = !hadBuild;
        waiting.postMessage('TAKE_OVER');
        const taken = (await Promise.race([inPlace, wait(ASSUMED_ANSWER_MS)])) ?? 'notTaken';
        // A page that was fetched past the worker that is there is of the old build all the same.
        if (taken === 'taken' && isOfNone) reload();
        return taken;
      }),
  };
}

/** Says to every window of this tablet that this one is in use, until the answer is called. */
export function holdInUse(locks: UpdateLocks): () => void {
  let letGo: () => void = () => undefined;
  const until = new Promise<void>((resolve) => {
    letGo = resolve;
  });
  void locks.request(IN_USE, { mode: 'shared' }, () => until).catch(() => undefined);
  return letGo;
}
