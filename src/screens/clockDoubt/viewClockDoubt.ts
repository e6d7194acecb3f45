import { findNewestAtMs, type StationState } from '../../station/stationState';

export interface ClockDoubt {
  readonly newestAtMs: number;
  readonly behindMs: number;
}

/** Does the tablet's clock lie before something that was already written? null when it does not. */
export function viewClockDoubt(state: StationState, nowMs: number): ClockDoubt | null {
  const newestAtMs = findNewestAtMs(state);
  return nowMs < newestAtMs ? { newestAtMs, behindMs: newestAtMs - nowMs } : null;
}
