import type { Speed } from './practiceEvent';

/** From this moment of the tablet's clock on, ms since 1970-01-01 UTC, practice runs so many times as fast. */
export interface SpeedChange {
  readonly wallMs: number;
  readonly times: Speed;
}

/** A stretch at one speed: where it begins on either clock, and how long it lasted on the tablet's, ms. */
interface Stretch {
  readonly wallMs: number;
  readonly practiceMs: number;
  readonly lastedMs: number;
  readonly times: number;
}

function listStretches(changes: readonly SpeedChange[], wallMs: number): readonly Stretch[] {
  const stretches: Stretch[] = [];
  let practiceMs = changes[0]?.wallMs ?? wallMs;
  for (const [at, change] of changes.entries()) {
    const untilMs = changes[at + 1]?.wallMs ?? wallMs;
    // A tablet whose clock was set back has let no time pass: practice stands until a speed is chosen anew.
    const lastedMs = Math.max(0, untilMs - change.wallMs);
    stretches.push({ wallMs: change.wallMs, practiceMs, lastedMs, times: change.times });
    practiceMs += lastedMs * change.times;
  }
  return stretches;
}

/**
 * What time is it in practice? In ms since 1970-01-01 UTC, from the tablet's clock and every change of speed in the
 * order in which it was made; before the first change it is the tablet's own time. No change of speed moves it, and it
 * never falls behind the last one, whatever the tablet's clock does. Exact. Checked in
 * tests/machines/practice/practiceClock.test.ts.
 */
export function readPracticeNow(changes: readonly SpeedChange[], wallMs: number): number {
  const last = listStretches(changes, wallMs).at(-1);
  return last === undefined ? wallMs : last.practiceMs + last.lastedMs * last.times;
}

/**
 * What did the tablet's clock show at this moment of practice? For "when was it done", which is of the real day. Rounded
 * down to a whole ms; where practice stood, the latest moment.
 */
export function findWallTime(changes: readonly SpeedChange[], practiceMs: number): number {
  const stretch = listStretches(changes, Number.POSITIVE_INFINITY).findLast(
    (each) => each.practiceMs <= practiceMs,
  );
  if (stretch === undefined) return practiceMs;
  return stretch.wallMs + Math.floor((practiceMs - stretch.practiceMs) / stretch.times);
}
