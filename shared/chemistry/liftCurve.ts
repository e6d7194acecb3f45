import { accept, type Result, refuse } from '../result';
import { listPossibleCurves } from './liftBand';
import { type LevelSeen, type ReadingsRefusal, refuseReadings } from './liftReadings';
import { type FittedSaturation, fitSaturation, type Point, type Saturation } from './saturation';
import { fitStraight, listRates } from './saturationStart';

/** Why no curve is drawn: what is wrong with the readings, or that no such curve passes them all. */
export type LiftRefusal = ReadingsRefusal | 'noCurve';

/** Level over minutes on the strand: base L₀, rise A in levels, rate k per minute. Never read beyond the strand's time. */
export interface LiftCurve {
  /** The one that runs closest to the readings. */
  readonly likely: FittedSaturation;
  /** The outermost of all that pass each reading within half a level. */
  readonly possible: readonly Saturation[];
}

/**
 * How does this strand lift? L(t) = L₀ + A(1 − e^(−kt)) by least squares, or the reason why no curve is drawn.
 * Minutes and levels as seen, in any order; the level told before the start is one of them. Refused too where no such
 * curve passes every reading within half a level. Checked in tests/evidence/liftCurve.test.ts.
 */
export function fitLiftCurve(readings: readonly LevelSeen[]): Result<LiftCurve, LiftRefusal> {
  const seen = readings.toSorted((one, other) => one.atMin - other.atMin);
  const refusal = refuseReadings(seen);
  if (refusal !== null) return refuse(refusal);
  const possible = listPossibleCurves(seen);
  const likely = fitWithin(seen.map(({ atMin, level }) => ({ t: atMin, y: level })));
  return likely === null || !(likely.rise > 0) || possible.length === 0
    ? refuse('noCurve')
    : accept({ likely, possible });
}

/**
 * The closest curve whose rate these readings can tell from none and from at once: the closest of a row of rates, then
 * refined. At either end of the row, and where refining comes to no end, the rate stays where it is.
 */
function fitWithin(points: readonly Point[]): FittedSaturation | null {
  const tried = listRates(points).flatMap((rate) => fitStraight(points, rate) ?? []);
  const best = tried.toSorted((one, other) => one.residualSum - other.residualSum)[0];
  if (best === undefined || best === tried[0] || best === tried.at(-1)) return best ?? null;
  const fitted = fitSaturation(points, best, false);
  return fitted.ok ? fitted.value : best;
}
