import { createSignal } from 'solid-js';
import * as v from 'valibot';
import type { ClockJump } from '../../shared/records/clockJump';
import { msPerDay } from '../../shared/units/time';
import { type Kept, keep, readKept } from './keep';

const KEY = 'strandproof.clockJumps';
const jumpsSchema = v.array(
  v.strictObject({
    atMs: v.pipe(v.number(), v.safeInteger()),
    aheadMs: v.pipe(v.number(), v.safeInteger(), v.minValue(1)),
  }),
);

/** So long a jump is remembered. Assumed because no skin test may be told to wait longer than four days. */
export const ASSUMED_JUMP_KEPT_MS = 8 * msPerDay;

/**
 * Jumps of this tablet's clock that nobody has explained yet. Kept beside the records and in neither copy of them: they
 * are about this tablet. Where they are lost the clock on the wall is believed, as it was before.
 * Checked in tests/src/tablet/clockJumps.test.ts.
 */
export function createClockJumps(kept: Kept) {
  const [jumps, setJumps] = createSignal<readonly ClockJump[]>(readKept(kept, KEY, jumpsSchema) ?? []);
  const put = (next: readonly ClockJump[]): void => {
    setJumps(next);
    keep(kept, KEY, next);
  };
  return {
    jumps,
    note: (jump: ClockJump) =>
      put([...jumps().filter(({ atMs }) => jump.atMs - atMs < ASSUMED_JUMP_KEPT_MS), jump]),
    /** A person has explained it. */
    forget: ({ atMs }: ClockJump) => put(jumps().filter((jump) => jump.atMs !== atMs)),
  };
}
