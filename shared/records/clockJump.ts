import { findWaitsSinceMs } from '../judgement/skinTest';
import { msPerMinute } from '../units/time';
import type { SkinTest } from './skinTest/skinTest';

/** The tablet's clock went ahead of a second one: it slept, or somebody put it ahead. */
export interface ClockJump {
  /** What the clock stood at afterwards, in ms since 1970-01-01 UTC. */
  readonly atMs: number;
  readonly aheadMs: number;
}

/** Two clocks at one moment: the one on the wall, and one that nobody sets but that may stand still in sleep. */
export interface TwoClocks {
  readonly wallMs: number;
  readonly steadyMs: number;
}

/** So far ahead is nobody's doubt. Assumed because a wait of hours is no shorter for a minute. */
export const ASSUMED_JUMP_MS = msPerMinute;

/**
 * Did the clock jump ahead between these two moments? By how much, or null. A steady clock may stand still while the
 * page sleeps (published: W3C High Resolution Time), so sleep looks the same as a clock that was put ahead.
 * Checked in tests/shared/records/clockJump.test.ts.
 */
export function findJump(before: TwoClocks, now: TwoClocks): ClockJump | null {
  const aheadMs = Math.round(now.wallMs - before.wallMs - (now.steadyMs - before.steadyMs));
  return aheadMs >= ASSUMED_JUMP_MS ? { atMs: now.wallMs, aheadMs } : null;
}

/** How much of a jump lies in the time since this moment? None of one that came before. */
export const countJumpSince = ({ atMs, aheadMs }: ClockJump, sinceMs: number): number =>
  Math.min(aheadMs, Math.max(0, atMs - sinceMs));

/** By how much may a wait that began at this moment be shorter than it looks? In ms. */
export const countDoubtMs = (jumps: readonly ClockJump[], sinceMs: number): number =>
  jumps.reduce((sum, jump) => sum + countJumpSince(jump, sinceMs), 0);

/** Does the wait of this test depend on what the jump was? Only while it stands and nobody has read it. */
export const isInDoubt = (
  test: Pick<SkinTest, 'seen' | 'takenBack' | 'putOnAtMs' | 'cameAtMs'>,
  jump: ClockJump,
): boolean =>
  test.seen === 'notReadYet' && test.takenBack === null && countJumpSince(jump, findWaitsSinceMs(test)) > 0;
