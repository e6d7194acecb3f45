import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import {
  ASSUMED_ANSWER_MS,
  ASSUMED_LOOK_EVERY_MS,
  type AskedOfWorker,
  makeUpdates,
  type UpdateLocks,
} from '../../../src/tablet/updates';

// Messages between ports are no timers, and go on.
beforeEach(
  () => void vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout', 'setInterval', 'clearInterval'] }),
);
afterEach(() => void vi.useRealTimers());

/** A build that waits, or is being laid down, and answers as the test says. */
function makeWorker(build: string | null) {
  const asked: AskedOfWorker[] = [];
  const heard: (() => void)[] = [];
  return {
    asked,
    change: () => {
      for (const listener of heard) listener();
    },
    worker: {
      postMessage: (what: AskedOfWorker, ports: Transferable[] = []) => {
        asked.push(what);
        const [port] = ports as MessagePort[];
        if (what === 'SAY_BUILD' && build !== null) port?.postMessage(build);
      },
      addEventListener: (_type: 'statechange', listener: () => void) => heard.push(listener),
    },
  };
}

type Worker = ReturnType<typeof makeWorker>['worker'];

/** A browser with a page kept in it, or none yet. */
function makeBrowser(waiting: Worker | null = null, controller: unknown = {}) {
  const found: (() => void)[] = [];
  const changed: (() => void)[] = [];
  const registration = {
    waiting,
    installing: null as Worker | null,
    addEventListener: (_type: 'updatefound', listener: () => void) => found.push(listener),
    update: vi.fn(async (): Promise<unknown> => undefined),
  };
  let isInUse = false;
  const locks = {
    request: async (_name: string, _options: object, held: (lock: unknown) => Promise<unknown>) =>
      held(isInUse ? null : {}),
  } as UpdateLocks;
  const reload = vi.fn();
  const told: (string | null)[] = [];
  const updates = makeUpdates(
    {
      controller,
      ready: Promise.resolve(registration),
      addEventListener: (_type, listener) => changed.push(listener),
    },
    locks,
    reload,
    (build) => told.push(build),
  );
  const fire = (listeners: readonly (() => void)[]) => {
    for (const listener of [...listeners]) listener();
  };
  return {
    updates,
    told,
    reload,
    registration,
    find: () => fire(found),
    change: () => fire(changed),
    setInUse: (next: boolean) => {
      isInUse = next;
    },
  };
}

/** So much time goes by, and what was sent has come. */
const pass = async (ms = 0) => {
  await vi.advanceTimersByTimeAsync(ms);
  await new Promise((resolve) => setImmediate(resolve));
  await vi.advanceTimersByTimeAsync(0);
};
describe('a newer build', () => {
  it('that waited already is told by its name, and one that comes later once it is whole', async () => {
    const first = makeWorker('0.2.0 aaaaaaaa');
    const { told, registration, find } = makeBrowser(first.worker);
    await pass();
    expect(told).toEqual(['0.2.0 aaaaaaaa']);
    const second = makeWorker('0.3.0 bbbbbbbb');
    registration.installing = second.worker;
    find();
    await pass();
    expect(told).toHaveLength(1);
    registration.installing = null;
    registration.waiting = second.worker;
    second.change();
    await pass();
    expect(told).toEqual(['0.2.0 aaaaaaaa', '0.3.0 bbbbbbbb']);
  });

  it('that does not say which it is waits all the same', async () => {
    const { told } = makeBrowser(makeWorker(null).worker);
    await pass(ASSUMED_ANSWER_MS - 1);
    expect(told).toEqual([]);
    await pass(1);
    expect(told).toEqual(['']);
  });

  it('that was given up in the middle is never told', async () => {
    const half = makeWorker('0.2.0 aaaaaaaa');
    const { told, registration, find } = makeBrowser();
    await pass();
    registration.installing = half.worker;
    find();
    registration.installing = null;
    half.change();
    await pass(ASSUMED_ANSWER_MS);
    expect([told, half.asked]).toEqual([[], []]);
  });

  it('is asked for once an hour, and a server that is gone is no fault', async () => {
    const { registration, updates } = makeBrowser();
    await pass(ASSUMED_LOOK_EVERY_MS - 1);
    expect(registration.update).not.toHaveBeenCalled();
    await pass(1);
    expect(registration.update).toHaveBeenCalledOnce();
    expect(await updates.look()).toBe(true);
    registration.update.mockRejectedValue(new TypeError('no network'));
    expect(await updates.look()).toBe(false);
  });
});

describe('taking it', () => {
  it('puts it in place and loads the page anew', async () => {
    const next = makeWorker('0.2.0 aaaaaaaa');
    const { updates, change, reload } = makeBrowser(next.worker);
    await pass();
    const taken = updates.take();
    await pass();
    expect(next.asked).toEqual(['SAY_BUILD', 'TAKE_OVER']);
    expect(reload).not.toHaveBeenCalled();
    change();
    expect(await taken).toBe('taken');
    expect(reload).toHaveBeenCalledOnce();
  });

  it('is refused while a window is in use, and nothing is asked of it', async () => {
    const next = makeWorker('0.2.0 aaaaaaaa');
    const { updates, setInUse } = makeBrowser(next.worker);
    setInUse(true);
    await pass();
    expect([await updates.take(), next.asked]).toEqual(['inUse', ['SAY_BUILD']]);
  });

  it('is said to have failed where none waits, or it does not come', async () => {
    expect(await makeBrowser().updates.take()).toBe('notTaken');
    const { updates, reload } = makeBrowser(makeWorker('0.2.0 aaaaaaaa').worker);
    const taken = updates.take();
    await pass(ASSUMED_ANSWER_MS);
    expect([await taken, reload.mock.calls.length]).toEqual(['notTaken', 0]);
  });

  it('does not load a page anew that is kept for the first time', async () => {
    const { change, reload } = makeBrowser(null, null);
    change();
    expect(reload).not.toHaveBeenCalled();
    change();
    expect(reload).toHaveBeenCalledOnce();
  });
});
