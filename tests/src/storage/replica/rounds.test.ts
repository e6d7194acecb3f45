import { describe, expect, it } from 'vitest';
import { accept, type Result, refuse } from '../../../../shared/result';
import type { Exchanged, ReplicaFailure } from '../../../../src/storage/replica/replica';
import {
  ASSUMED_RETRY_MAX_MS,
  ASSUMED_RETRY_MS,
  ASSUMED_ROUND_MS,
  startRounds,
  waitAfter,
} from '../../../../src/storage/replica/rounds';

type Ended = Result<Exchanged, ReplicaFailure>;
const done: Ended = accept({ came: 0, went: 0, gone: 0, refused: [], later: [] });
const settle = () => new Promise((resolve) => setTimeout(resolve));

/** Rounds whose exchanges and waits the test ends itself. */
function start(chance = 1) {
  const waits: { ms: number; work: () => void; isOff: boolean }[] = [];
  const ends: ((ended: Ended) => void)[] = [];
  const told: Ended[] = [];
  let signal: AbortSignal | undefined;
  const rounds = startRounds({
    exchange: (given) => {
      signal = given;
      return new Promise((resolve) => {
        ends.push(resolve);
        given.addEventListener('abort', () => resolve(refuse('stopped')));
      });
    },
    chance: () => chance,
    onEnded: (ended) => told.push(ended),
    later(work, ms) {
      const wait = { ms, work, isOff: false };
      waits.push(wait);
      return () => {
        wait.isOff = true;
      };
    },
  });
  const end = async (ended: Ended) => {
    ends.at(-1)?.(ended);
    await settle();
  };
  return { rounds, waits, begun: ends, told, end, isAborted: () => signal?.aborted };
}

describe('rounds of a replica', () => {
  it('begin at once, and again a minute after each that came to its end', async () => {
    const { waits, begun, told, end } = start();
    expect([begun.length, waits.length]).toEqual([1, 0]);
    await end(done);
    expect([told, waits.map(({ ms }) => ms)]).toEqual([[done], [ASSUMED_ROUND_MS]]);
    waits[0]?.work();
    expect(begun).toHaveLength(2);
  });

  it('wait twice as long after each failure, up to ten minutes, and a minute once it is whole', async () => {
    const { waits, end } = start();
    for (let failures = 0; failures < 10; failures += 1) {
      await end(refuse('gone'));
      waits.at(-1)?.work();
    }
    expect(waits.map(({ ms }) => ms / ASSUMED_RETRY_MS)).toEqual([1, 2, 4, 8, 16, 32, 64, 120, 120, 120]);
    await end(done);
    expect(waits.at(-1)?.ms).toBe(ASSUMED_ROUND_MS);
  });

  it('wait by chance at least half as long, never longer', () => {
    for (const failures of [0, 1, 5, 2000]) {
      const most = waitAfter(failures, 1);
      expect(waitAfter(failures, 0)).toBe(most / 2);
      expect(most).toBeLessThanOrEqual(ASSUMED_RETRY_MAX_MS);
    }
  });

  it('begin at once when something is new, one at a time', async () => {
    const { rounds, waits, begun, end } = start();
    rounds.nudge();
    rounds.nudge();
    expect(begun).toHaveLength(1);
    await end(done);
    expect(waits.map(({ ms }) => ms)).toEqual([0]);
    waits[0]?.work();
    await end(done);
    expect(waits[1]?.ms).toBe(ASSUMED_ROUND_MS);
    rounds.nudge();
    expect([waits[1]?.isOff, begun.length]).toEqual([true, 3]);
  });

  it('end where there are no other stations', async () => {
    const { waits, end, told } = start();
    await end(refuse('off'));
    expect([waits, told]).toEqual([[], [refuse('off')]]);
  });

  it('break off when they are told to, say nothing of it and begin no other', async () => {
    const { rounds, waits, begun, told, isAborted } = start();
    await rounds.stop();
    rounds.nudge();
    await settle();
    expect([isAborted(), begun.length, waits, told]).toEqual([true, 1, [], []]);
    const waiting = start();
    await waiting.end(done);
    await waiting.rounds.stop();
    waiting.rounds.nudge();
    expect([waiting.waits[0]?.isOff, waiting.begun.length]).toEqual([true, 1]);
  });
});
