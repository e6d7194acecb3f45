import { describe, expect, it } from 'vitest';
import { makeQueues } from '../../../src/storage/queue';

const wait = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms));

describe('work in line', () => {
  it('of one name never overlaps, and keeps its order, also after a failure', async () => {
    const queues = makeQueues();
    const told: string[] = [];
    const work = (label: string, ms: number) => async () => {
      told.push(`+${label}`);
      await wait(ms);
      told.push(`-${label}`);
      if (label === 'b') throw new Error('b failed');
      return label;
    };
    const a = queues.run('one', work('a', 10));
    const b = queues.run('one', work('b', 5));
    const c = queues.run('one', work('c', 0));
    await expect(b).rejects.toThrow('b failed');
    expect(await Promise.all([a, c])).toStrictEqual(['a', 'c']);
    expect(told).toStrictEqual(['+a', '-a', '+b', '-b', '+c', '-c']);
  });

  it('of two names goes on side by side', async () => {
    const queues = makeQueues();
    let isSlowDone = false;
    const slow = queues.run('one', async () => {
      await wait(20);
      isSlowDone = true;
    });
    await queues.run('two', async () => undefined);
    expect(isSlowDone).toBe(false);
    await slow;
  });

  it('is waited for by a drain, with what joins the line meanwhile', async () => {
    const queues = makeQueues();
    const told: string[] = [];
    void queues.run('one', async () => {
      await wait(5);
      told.push('first');
      void queues.run('one', async () => {
        await wait(5);
        told.push('second');
      });
    });
    await queues.drain();
    expect(told).toStrictEqual(['first', 'second']);
    await queues.drain();
  });
});
