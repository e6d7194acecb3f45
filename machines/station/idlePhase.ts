import { COVER_WARNING_S } from '../../shared/records/settings';
import { msPerMinute, msPerSecond } from '../../shared/units/time';

/** What a tick of the clock says to a tablet that may be idle. */
export interface IdleTick {
  readonly nowMs: number;
  /** Minutes from the last touch to the cover; null where there is none. */
  readonly coverAfterMin: number | null;
  /** What is shown now is read by somebody whose hands are busy: it counts as a touch. */
  readonly isBeingRead: boolean;
}

/** Does this tick begin the time anew? While somebody reads, where there is no cover, and where the clock was set back. */
export const beginsAnew = (touchedAtMs: number, { nowMs, coverAfterMin, isBeingRead }: IdleTick): boolean =>
  isBeingRead || coverAfterMin === null || nowMs < touchedAtMs;

/** ms from now to the cover; nothing or less once it is due, and never while the time begins anew. */
export const findMsToCover = (touchedAtMs: number, tick: IdleTick): number =>
  tick.coverAfterMin === null || beginsAnew(touchedAtMs, tick)
    ? Number.POSITIVE_INFINITY
    : touchedAtMs + tick.coverAfterMin * msPerMinute - tick.nowMs;

export const isCoverDue = (touchedAtMs: number, tick: IdleTick): boolean =>
  findMsToCover(touchedAtMs, tick) <= 0;

export const isWarningDue = (touchedAtMs: number, tick: IdleTick): boolean =>
  findMsToCover(touchedAtMs, tick) <= COVER_WARNING_S * msPerSecond;
