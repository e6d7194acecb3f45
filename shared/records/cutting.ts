import { msPerHour } from '../units/time';
import type { ConsultationRecord } from './record';

/** So long a cutting is kept after its glass showed nothing, since it can still break next day: common practice, no source. */
export const CUTTING_KEPT_MS = 24 * msPerHour;

/**
 * So long it goes on being told of once it is to be looked at. Assumed because a salon that is closed on the next day is
 * open on the one after, and older than that it tells nobody anything.
 */
export const ASSUMED_CUTTING_SHOWN_MS = 48 * msPerHour;

/**
 * When is her cutting to be looked at once more? From the reading that saw nothing; null where there is none, where it
 * reacted, and once it is told of no longer. A cutting that stood in a glass for what she no longer tells is kept too.
 * In ms since 1970-01-01 UTC; exact. Checked in tests/shared/records/cutting.test.ts.
 */
export function findCuttingLookAtMs(
  { incompatibility }: Pick<ConsultationRecord, 'incompatibility'>,
  nowMs: number,
): number | null {
  if (incompatibility?.seen !== 'nothing' || incompatibility.keptSinceMs === null) return null;
  const lookAtMs = incompatibility.keptSinceMs + CUTTING_KEPT_MS;
  return nowMs > lookAtMs + ASSUMED_CUTTING_SHOWN_MS ? null : lookAtMs;
}
