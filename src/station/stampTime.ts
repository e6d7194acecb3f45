/** Networks set tablets right by a second or two all day long. Assumed because no clock here is read finer than that. */
export const ASSUMED_UNNOTICED_MS = 5_000;

/**
 * At what time is a tap written? In ms since 1970-01-01 UTC; never before what is written already, so that no rinse
 * waits for a clock that the network set right. One that fell further behind is asked about first.
 * Checked in tests/src/station/stampTime.test.ts.
 */
export const stampTime = (nowMs: number, newestAtMs: number): number =>
  newestAtMs > nowMs && newestAtMs - nowMs <= ASSUMED_UNNOTICED_MS ? newestAtMs : nowMs;
