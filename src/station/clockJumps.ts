import { type Accessor, createSignal } from 'solid-js';
import * as v from 'valibot';
import type { ClockJump } from '../../shared/records/clockJump';
import { msPerDay } from '../../shared/units/time';

const KEY = 'strandproof.clockJumps';
const jumpsSchema = v.array(
  v.strictObject({
    atMs: v.pipe(v.number(), v.safeInteger()),
    aheadMs: v.pipe(v.number(), v.safeInteger(), v.minValue(1)),
  }),
);

/** So long a jump is remembered. Assumed because no skin test may be told to wait longer than four days. */
export const ASSUMED_JUMP_KEPT_MS = 8 * msPerDay;

type Keep = Pick<globalThis.Storage, 'getItem' | 'setItem'>;

function readKept(keep: Keep): readonly ClockJump[] {
  try {
    const read = v.safeParse(jumpsSchema, JSON.parse(keep.getItem(KEY) ?? '[]'));
    return read.success ? read.output : [];
  } catch {
    return [];
  }
}

/**
 * Jumps of this tablet's clock that nobody has explained yet. Kept beside the records and in neither copy of them: they
 * are about this tablet. Where they are lost the clock on the wall is believed, as it was before.
 * Checked in tests/src/station/clockJumps.test.ts.
 */
export function createClockJumps(keep: Keep): {
  readonly jumps: Accessor<readonly ClockJump[]>;
  readonly note: (jump: ClockJump) => void;
  readonly forget: (jump: ClockJump) => void;
} {
  const [jumps, setJumps] = createSignal(readKept(keep));
  const put = (next: readonly ClockJump[]): void => {
    setJumps(next);
    try {
      keep.setItem(KEY, JSON.stringify(next));
    } catch {
      // They are remembered as long as this page lives.
    }
  };
  return {
    jumps,
    note: (jump) => put([...jumps().filter(({ atMs }) => jump.atMs - atMs < ASSUMED_JUMP_KEPT_MS), jump]),
    forget: ({ atMs }) => put(jumps().filter((jump) => jump.atMs !== atMs)),
  };
}
