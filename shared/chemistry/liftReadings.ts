import { secondsPerMinute } from '../units/time';

/** How light the strand was, and how many minutes after it was begun. The level told before it counts, at 0. */
export interface LevelSeen {
  readonly atMin: number;
  readonly level: number;
}

/** A reading is good to half a level, up or down: common practice, no source. */
export const LEVEL_GRAIN = 0.5;
/** Three numbers make the curve, and a fourth reading says whether they may be believed: exact, by counting. */
export const FEWEST_READINGS = 4;
/** The trade's depths, black to lightest blond; from memory: cosmetology textbooks. */
const DARKEST = 1;
const LIGHTEST = 10;

/** Why no curve is drawn through what was seen. */
export type ReadingsRefusal = 'notALevel' | 'beforeStart' | 'sameTimes' | 'falling' | 'tooFew' | 'noLift';

/**
 * May a curve be drawn through these readings? null, or the first reason why not. In order of time.
 * A level that is none; a look before the start; two within one second; a fall by more than the grain below what was
 * seen before; fewer than four; no rise beyond the grain. Checked in tests/evidence/liftCurve.test.ts.
 */
export function refuseReadings(seen: readonly LevelSeen[]): ReadingsRefusal | null {
  if (seen.some(({ atMin, level }) => !(level >= DARKEST && level <= LIGHTEST && Number.isFinite(atMin))))
    return 'notALevel';
  if (seen.some(({ atMin }) => atMin < 0)) return 'beforeStart';
  const gapsMin = seen.slice(1).map(({ atMin }, index) => atMin - (seen[index]?.atMin ?? 0));
  if (gapsMin.some((gapMin) => gapMin * secondsPerMinute < 1)) return 'sameTimes';
  let highest = Number.NEGATIVE_INFINITY;
  for (const { level } of seen) {
    if (level < highest - LEVEL_GRAIN) return 'falling';
    highest = Math.max(highest, level);
  }
  if (seen.length < FEWEST_READINGS) return 'tooFew';
  return highest - Math.min(...seen.map(({ level }) => level)) > LEVEL_GRAIN ? null : 'noLift';
}
