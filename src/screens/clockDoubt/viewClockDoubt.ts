import { ASSUMED_UNNOTICED_MS } from '../../station/stampTime';
import { findNewestAtMs, type StationState } from '../../station/stationState';

export interface ClockDoubt {
  readonly newestAtMs: number;
  readonly behindMs: number;
}

/**
 * Was the tablet's clock set back while clients are here or skin tests are on? null when it was not.
 * `seenMs` is the latest time it is known to have shown. A few seconds are nobody's doubt: see src/station/stampTime.ts.
 */
export function viewClockDoubt(state: StationState, nowMs: number, seenMs: number): ClockDoubt | null {
  const isAnyTestOn = state.skinTests.some(({ takenBack }) => takenBack === null);
  if (state.open.size === 0 && !isAnyTestOn) return null;
  const newestAtMs = Math.max(findNewestAtMs(state), seenMs);
  return newestAtMs - nowMs > ASSUMED_UNNOTICED_MS ? { newestAtMs, behindMs: newestAtMs - nowMs } : null;
}
