import { findNewestAtMs, type StationState } from '../../station/stationState';

export interface ClockDoubt {
  readonly newestAtMs: number;
  readonly behindMs: number;
}

/** Networks set tablets right by a second or two all day long. Assumed because no clock here is read finer than that. */
const ASSUMED_UNNOTICED_MS = 5_000;

/**
 * Was the tablet's clock set back while clients are here? null when it was not.
 * `seenMs` is the latest time it is known to have shown; an entry written later than now is always in doubt.
 */
export function viewClockDoubt(state: StationState, nowMs: number, seenMs: number): ClockDoubt | null {
  if (state.open.size === 0) return null;
  const newestAtMs = Math.max(findNewestAtMs(state), seenMs);
  const isInDoubt = nowMs < findNewestAtMs(state) || newestAtMs - nowMs > ASSUMED_UNNOTICED_MS;
  return isInDoubt ? { newestAtMs, behindMs: newestAtMs - nowMs } : null;
}
