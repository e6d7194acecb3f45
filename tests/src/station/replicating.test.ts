import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { accept, type Result, refuse } from '../../../shared/result';
import { makeReplicating, type Others } from '../../../src/station/replicating';
import type { Exchanged, ReplicaFailure } from '../../../src/storage/replica/replica';
import { ASSUMED_ROUND_MS } from '../../../src/storage/replica/rounds';

const startAtMs = Date.UTC(2026, 2, 5, 14, 2);
const quiet: Exchanged = { came: 0, went: 0, gone: 0, refused: [], later: [] };
const damaged = { id: 'consultation:abcd:0', why: 'damaged' } as const;

beforeEach(() => void vi.useFakeTimers({ now: startAtMs }));
afterEach(() => void vi.useRealTimers());

/** A station beside a replica that answers as it is told; three records are here. */
function start(
  answers: Result<Exchanged, ReplicaFailure>[],
  { isKnown = true, missing = 3 as number | null, wait = (): Promise<void> => Promise.resolve() } = {},
) {
  const shown: (Others | null)[] = [];
  const refused: number[] = [];
  let known = isKnown;
  let asked = 0;
  const replicating = makeReplicating({
    replica: {
      exchange: async () => {
        asked += 1;
        return answers[Math.min(asked, answers.length) - 1] ?? refuse('gone');
      },
      countMissing: () => missing,
    },
    here: {
      readIds: async () => {
        await wait();
        return new Set(['a', 'b', 'c']);
      },
      read: () => [],
      isErased: () => false,
      isHeldBack: () => false,
      take: async () => accept({ refused: [], later: [] }),
    },
    now: Date.now,
    chance: () => 1,
    show: (others) => shown.push(others),
    known: {
      read: () => known,
      keep: (next) => {
        known = next;
      },
    },
    onRefused: (count) => refused.push(count),
  });
  replicating.start();
  return {
    replicating,
    refused,
    isKnown: () => known,
    asked: () => asked,
    shown: async () => {
      await vi.advanceTimersByTimeAsync(0);
      return shown;
    },
  };
}

describe('replicating', () => {
  it('says when it was last in step', async () => {
    const station = start([accept(quiet)]);
    expect(await station.shown()).toEqual([
      { kind: 'asking' },
      { kind: 'inStep', atMs: startAtMs, refused: [], later: [] },
    ]);
    await vi.advanceTimersByTimeAsync(ASSUMED_ROUND_MS);
    expect((await station.shown()).at(-1)).toMatchObject({ atMs: startAtMs + ASSUMED_ROUND_MS });
  });

  it('says since when the others are not reached, and how many records wait', async () => {
    const station = start([accept(quiet), refuse('gone')]);
    await vi.advanceTimersByTimeAsync(ASSUMED_ROUND_MS);
    const apart = { kind: 'apart', why: 'gone', inStepAtMs: startAtMs, waiting: 3, refused: [], later: [] };
    expect((await station.shown()).at(-1)).toEqual(apart);
  });

  it('tells a server that is gone from one that never had any others', async () => {
    const lone = start([refuse('gone')], { isKnown: false });
    expect((await lone.shown()).at(-1)).toEqual({ kind: 'off' });
    await vi.advanceTimersByTimeAsync(ASSUMED_ROUND_MS * 20);
    expect(lone.asked()).toBe(1);
    const known = start([refuse('gone'), refuse('off')], { missing: null });
    expect((await known.shown()).at(-1)).toMatchObject({ kind: 'apart', inStepAtMs: null, waiting: null });
    await vi.advanceTimersByTimeAsync(ASSUMED_ROUND_MS);
    expect((await known.shown()).at(-1)).toEqual({ kind: 'off' });
    expect(known.isKnown()).toBe(false);
    const first = start([accept(quiet)], { isKnown: false });
    await first.shown();
    expect(first.isKnown()).toBe(true);
  });

  it.each(['silent', 'turnedAway'] as const)(
    'goes on and says why where the server says that others were set up: %s',
    async (why) => {
      const station = start([refuse(why), accept(quiet)], { isKnown: false, missing: null });
      expect((await station.shown()).at(-1)).toMatchObject({ kind: 'apart', why });
      expect(station.isKnown()).toBe(true);
      await vi.advanceTimersByTimeAsync(ASSUMED_ROUND_MS);
      expect((await station.shown()).at(-1)).toMatchObject({ kind: 'inStep' });
    },
  );

  it('shares at once what was closed, tested or erased, and nothing of who is open', async () => {
    const station = start([accept(quiet)]);
    await station.shown();
    for (const log of ['open-abcd', 'settings']) station.replicating.noteWritten(log);
    await vi.advanceTimersByTimeAsync(0);
    expect(station.asked()).toBe(1);
    for (const log of ['closed-2026-03', 'skintest-abcd', 'erased']) {
      station.replicating.noteWritten(log);
      await vi.advanceTimersByTimeAsync(0);
    }
    expect(station.asked()).toBe(4);
    station.replicating.goNow();
    await vi.advanceTimersByTimeAsync(0);
    expect(station.asked()).toBe(5);
  });

  it('tells of what is left out once, and shows it for as long as it lies there', async () => {
    const left = accept({ ...quiet, refused: [damaged] });
    const station = start([left, left, accept(quiet), left]);
    await vi.advanceTimersByTimeAsync(ASSUMED_ROUND_MS * 1.5);
    expect((await station.shown()).slice(-2)).toMatchObject([{ refused: [damaged] }, { refused: [damaged] }]);
    expect(station.refused).toEqual([1]);
    await vi.advanceTimersByTimeAsync(ASSUMED_ROUND_MS * 2);
    expect(station.refused).toEqual([1, 1]);
  });

  it('tells of what is left out in the place of something else', async () => {
    const other = { id: 'consultation:wxyz:0', why: 'damaged' } as const;
    const station = start([accept({ ...quiet, refused: [damaged] }), accept({ ...quiet, refused: [other] })]);
    await vi.advanceTimersByTimeAsync(ASSUMED_ROUND_MS * 1.5);
    expect(station.refused).toEqual([1, 1]);
  });

  it('tells what is not taken up yet', async () => {
    const later = [{ id: damaged.id, why: 'fromLater' }] as const;
    const station = start([accept({ ...quiet, later }), refuse('gone'), accept(quiet)]);
    expect((await station.shown()).at(-1)).toMatchObject({ kind: 'inStep', later });
    await vi.advanceTimersByTimeAsync(ASSUMED_ROUND_MS);
    expect((await station.shown()).at(-1)).toMatchObject({ kind: 'apart', later });
    await vi.advanceTimersByTimeAsync(ASSUMED_ROUND_MS);
    expect((await station.shown()).at(-1)).toMatchObject({ kind: 'inStep', later: [] });
  });

  it('tells nothing older than what it told', async () => {
    const wait = () => new Promise<void>((resolve) => setTimeout(resolve, 1000));
    const station = start([refuse('gone'), accept(quiet)], { wait });
    await station.shown();
    station.replicating.goNow();
    await vi.advanceTimersByTimeAsync(3000);
    expect((await station.shown()).map((others) => others?.kind)).toEqual(['asking', 'inStep']);
  });

  it('ends with the window that writes, and begins again with it', async () => {
    const station = start([accept(quiet)]);
    await station.shown();
    await station.replicating.stop();
    station.replicating.noteWritten('erased');
    await vi.advanceTimersByTimeAsync(ASSUMED_ROUND_MS * 3);
    expect([(await station.shown()).at(-1), station.asked()]).toEqual([null, 1]);
    station.replicating.start();
    await vi.advanceTimersByTimeAsync(0);
    expect(station.asked()).toBe(2);
  });
});
