import { LEVEL_GRAIN, type LevelSeen } from './liftReadings';
import { readSaturation, type Saturation } from './saturation';
import { listRates } from './saturationStart';

/**
 * A curve that passes a slot by less than this passes it, in levels. Assumed because corners lie on the edge of a slot and
 * are off it by rounding of doubles: a million times this is still less than anybody sees.
 */
const ASSUMED_ROUNDING_LEVELS = 1e-9;

/** Where a reading may really lie: the share of the whole rise at its time, and the levels half a level to each side. */
interface Slot {
  readonly share: number;
  readonly low: number;
  readonly high: number;
}

/**
 * Which curves could it be as well, when each reading is good to half a level only? The outermost ones.
 * Of one rate, a curve is a straight line in 1 − e^(−kt), so those that pass every reading within the grain have their
 * corners where a line touches two slots, or lies flat along one: exact. Rates are tried in the row of `listRates`.
 * None that falls: lightener does not darken. Readings in order of time, as `fitLiftCurve` takes them; at least two.
 * `grain` is how far a reading may be off, in levels.
 * Why not one curve shifted by half a level up and down: it covers the true time far too seldom, see
 * tests/evidence/liftCurveNoise.test.ts.
 */
export function listPossibleCurves(seen: readonly LevelSeen[], grain = LEVEL_GRAIN): readonly Saturation[] {
  const points = seen.map(({ atMin, level }) => ({ t: atMin, y: level }));
  return listRates(points).flatMap((rate) => {
    const slots = points.map(({ t, y }) => ({
      share: -Math.expm1(-rate * t),
      low: y - grain,
      high: y + grain,
    }));
    return listCorners(slots).map(({ base, rise }) => ({ base, rise, rate }));
  });
}

function listCorners(slots: readonly Slot[]): readonly Omit<Saturation, 'rate'>[] {
  const flat = slots.flatMap(({ low, high }) => [low, high].map((base) => ({ base, rise: 0 })));
  const slanted = slots.flatMap((one, index) =>
    slots
      .slice(index + 1)
      .flatMap((other) =>
        [one.low, one.high].flatMap((from) =>
          [other.low, other.high].map((to) => joinEnds(one.share, from, other.share, to)),
        ),
      ),
  );
  return [...flat, ...slanted].filter((line) => line.rise >= 0 && passesAll(slots, line));
}

function joinEnds(share: number, from: number, otherShare: number, to: number): Omit<Saturation, 'rate'> {
  const rise = (to - from) / (otherShare - share);
  return { base: from - rise * share, rise };
}

const passesAll = (slots: readonly Slot[], { base, rise }: Omit<Saturation, 'rate'>): boolean =>
  slots.every(({ share, low, high }) => {
    const level = base + rise * share;
    return level >= low - ASSUMED_ROUNDING_LEVELS && level <= high + ASSUMED_ROUNDING_LEVELS;
  });

/** How light at least, and at most, after so many minutes? Over all of these curves; both the same where there is one. */
export function readBandAt(
  curves: readonly Saturation[],
  atMin: number,
): { readonly low: number; readonly high: number } {
  const levels = curves.map((curve) => readSaturation(curve, atMin));
  return { low: Math.min(...levels), high: Math.max(...levels) };
}
