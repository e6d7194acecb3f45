import { describe, expect, it } from 'vitest';
import { requestWriter, type WriterClaim } from '../../../src/storage/writerLock';

/** As much of a lock manager as the standard says of one exclusive lock: granted in the order of asking. */
const makeLocks = () => {
  const line: (() => Promise<void>)[] = [];
  let isHeld = false;
  let breakOff: (() => void) | null = null;

  const serve = async (): Promise<void> => {
    const next = isHeld ? undefined : line.shift();
    if (next === undefined) return;
    isHeld = true;
    await next();
    isHeld = false;
    void serve();
  };

  const request = (
    name: string,
    options: LockOptions,
    work: (lock: Lock | null) => Promise<unknown>,
  ): Promise<unknown> => {
    if (options.ifAvailable === true && (isHeld || line.length > 0)) return Promise.resolve(work(null));
    return new Promise((resolve, reject) => {
      const turn = async (): Promise<void> => {
        const stolen = new Promise<void>((end) => {
          breakOff = () => {
            reject(new DOMException('stolen', 'AbortError'));
            end();
          };
        });
        await Promise.race([stolen, work({ name, mode: 'exclusive' }).then(resolve)]);
      };
      line.push(turn);
      options.signal?.addEventListener('abort', () => {
        if (!line.includes(turn)) return;
        line.splice(line.indexOf(turn), 1);
        reject(new DOMException('left', 'AbortError'));
      });
      void serve();
    });
  };
  return {
    locks: { request } as unknown as LockManager,
    steal: () => breakOff?.(),
    countInLine: () => line.length,
  };
};

const open = (locks: LockManager | undefined): { claim: WriterClaim; told: string[] } => {
  const told: string[] = [];
  const claim = requestWriter(locks, 'writer', {
    onGranted: () => told.push('granted'),
    onWaiting: () => told.push('waiting'),
    onLost: (why) => told.push(why),
  });
  return { claim, told };
};

const settle = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 5));

describe('the writer’s place', () => {
  it('goes to the first window, and the second one waits until it is given up', async () => {
    const { locks } = makeLocks();
    const [first, second, third] = [open(locks), open(locks), open(locks)];
    await settle();
    expect([first.told, second.told, third.told]).toStrictEqual([['granted'], ['waiting'], ['waiting']]);
    first.claim.giveUp();
    await settle();
    expect([second.told, third.told]).toStrictEqual([['waiting', 'granted'], ['waiting']]);
    expect(first.told, 'silent after giving up').toStrictEqual(['granted']);
  });

  it('passes over a window that left the line', async () => {
    const { locks, countInLine } = makeLocks();
    const [first, second, third] = [open(locks), open(locks), open(locks)];
    await settle();
    expect(countInLine()).toBe(2);
    second.claim.giveUp();
    expect(countInLine()).toBe(1);
    first.claim.giveUp();
    await settle();
    expect([second.told, third.told]).toStrictEqual([['waiting'], ['waiting', 'granted']]);
  });

  it('is not taken by a window that gave up before it was asked', async () => {
    const { locks } = makeLocks();
    const first = open(locks);
    first.claim.giveUp();
    const second = open(locks);
    await settle();
    expect([first.told.includes('waiting'), second.told.at(-1)]).toStrictEqual([false, 'granted']);
  });

  it('is told when it was broken off, and when the browser knows no locks', async () => {
    const { locks, steal } = makeLocks();
    const first = open(locks);
    await settle();
    steal();
    await settle();
    expect(first.told).toStrictEqual(['granted', 'brokenOff']);
    expect(open(undefined).told).toStrictEqual(['unavailable']);
    const refusing = { request: () => Promise.reject(new DOMException('no', 'SecurityError')) };
    const refused = open(refusing as unknown as LockManager);
    await settle();
    expect(refused.told).toStrictEqual(['unavailable']);
  });
});
