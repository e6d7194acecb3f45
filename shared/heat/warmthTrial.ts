import { msPerSecond } from '../units/time';

/** Heat on skin is stopped after so long, felt or not, in seconds. common practice, no source. */
export const WARMTH_TRIAL_CAP_S = 30;

/**
 * How far is the dryer held from the skin, in cm? At least a foot. Assumed because hand-warm air at the lowest heat is
 * all that the trial needs, and no source gives a distance for bare skin; further away is always right.
 */
export const ASSUMED_DRYER_DISTANCE_CM = 30;

/**
 * From which difference on does it tell anything, in seconds? Assumed because both runs are counted in whole seconds
 * from the last full one, so that either may be a second off.
 */
export const ASSUMED_TELLING_S = 3;

/** Seconds until warmth was felt on each forearm, whole ones up to the cap; null where it was not felt within it. */
export interface WarmthTimes {
  readonly bareS: number | null;
  readonly sprayedS: number | null;
}

/** What the two times tell, of skin alone: nothing of hair under a plate. */
export type WarmthTold =
  | { readonly code: 'later' | 'sooner'; readonly byS: number }
  | { readonly code: 'laterThanCap' | 'soonerThanCap' | 'alike' | 'neitherFelt' };

/**
 * Which forearm was warm first, and does that tell anything? Takes whole seconds from 0 to the cap, or null.
 * One that stayed cool to the end differs by an unknown time: then no figure is given.
 * Checked by tests/shared/heat/warmthTrial.test.ts.
 */
export function compareWarmth({ bareS, sprayedS }: WarmthTimes): WarmthTold {
  if (bareS === null && sprayedS === null) return { code: 'neitherFelt' };
  const byS = (sprayedS ?? WARMTH_TRIAL_CAP_S) - (bareS ?? WARMTH_TRIAL_CAP_S);
  if (Math.abs(byS) < ASSUMED_TELLING_S) return { code: 'alike' };
  if (sprayedS === null) return { code: 'laterThanCap' };
  if (bareS === null) return { code: 'soonerThanCap' };
  return { code: byS > 0 ? 'later' : 'sooner', byS: Math.abs(byS) };
}

/** How many whole seconds has this run lasted? Never below nothing and never past the cap, whatever the clock did. */
export const countRunS = (startedAtMs: number, nowMs: number): number =>
  Math.min(Math.max(Math.floor((nowMs - startedAtMs) / msPerSecond), 0), WARMTH_TRIAL_CAP_S);
