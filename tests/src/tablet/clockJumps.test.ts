import { createRoot } from 'solid-js';
import { expect, it } from 'vitest';
import { ASSUMED_JUMP_KEPT_MS, createClockJumps } from '../../../src/tablet/clockJumps';

const nowMs = Date.UTC(2026, 2, 3, 9);
const hour = 3_600_000;

function makeKeep(kept: string | null = null) {
  let held = kept;
  return {
    getItem: () => held,
    setItem: (_key: string, value: string) => {
      held = value;
    },
    read: () => held,
  };
}

const inRoot = <T>(work: () => T): T =>
  createRoot((dispose) => {
    const done = work();
    dispose();
    return done;
  });

it('keeps a jump through a reload, until a person has explained it', () =>
  inRoot(() => {
    const keep = makeKeep();
    const jump = { atMs: nowMs, aheadMs: hour };
    createClockJumps(keep).note(jump);
    const again = createClockJumps(keep);
    expect(again.jumps()).toEqual([jump]);
    again.forget(jump);
    expect(again.jumps()).toEqual([]);
    expect(createClockJumps(keep).jumps()).toEqual([]);
  }));

it('lets go of those that no skin test can wait through', () =>
  inRoot(() => {
    const made = createClockJumps(makeKeep());
    made.note({ atMs: nowMs, aheadMs: hour });
    made.note({ atMs: nowMs + ASSUMED_JUMP_KEPT_MS - 1, aheadMs: hour });
    expect(made.jumps()).toHaveLength(2);
    made.note({ atMs: nowMs + ASSUMED_JUMP_KEPT_MS, aheadMs: hour });
    expect(made.jumps().map(({ atMs }) => atMs - nowMs)).toEqual([
      ASSUMED_JUMP_KEPT_MS - 1,
      ASSUMED_JUMP_KEPT_MS,
    ]);
  }));

it.each(['{', '{}', '[{"atMs":1}]', '[{"atMs":1,"aheadMs":-5}]', '[{"atMs":"x","aheadMs":5}]'])(
  'begins with none where what is kept is no list of jumps: %s',
  (kept) => inRoot(() => expect(createClockJumps(makeKeep(kept)).jumps()).toEqual([])),
);

it('remembers by itself where the browser keeps nothing', () =>
  inRoot(() => {
    const refuse = (): never => {
      throw new Error('refused');
    };
    const made = createClockJumps({ getItem: refuse, setItem: refuse });
    made.note({ atMs: nowMs, aheadMs: hour });
    expect(made.jumps()).toHaveLength(1);
  }));
