import type { Clock } from './clock';

/**
 * Since when has this clock waited for a look? From the moment the first look fell due that nobody has made since the
 * last one, so that what is shown goes on growing until somebody looks; null while no look is due. In ms since
 * 1970-01-01 UTC; exact. Looks fall due before the end only. Checked in tests/shared/records/lookDue.test.ts.
 */
export function findLookDueSinceMs(clock: Clock, nowMs: number): number | null {
  const { looks, startedAtMs, dueAtMs, endedAtMs, lookedAtMs } = clock;
  if (looks === null || endedAtMs !== null || nowMs >= dueAtMs) return null;
  const firstAtMs = startedAtMs + looks.firstAfterMs;
  const last = Math.max(Number.NEGATIVE_INFINITY, ...lookedAtMs.filter((lookMs) => lookMs <= nowMs));
  /** A look counts for the interval it was made in: the next one is due with the next interval. */
  const nextAtMs =
    last < firstAtMs
      ? firstAtMs
      : firstAtMs + (Math.floor((last - firstAtMs) / looks.everyMs) + 1) * looks.everyMs;
  return nextAtMs <= nowMs && nextAtMs < dueAtMs ? nextAtMs : null;
}
