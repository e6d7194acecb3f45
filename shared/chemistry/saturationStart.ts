import { type FittedSaturation, type Point, sumSquares } from './saturation';

/**
 * How much of a turn is none? Rate times span.
 * Assumed because such a curve lies within 0.06 levels of a straight line over the whole scale, an eighth of what can be
 * read: slower cannot be told from straight.
 */
const ASSUMED_STRAIGHT_TURN = 0.05;
/**
 * How much of a turn is all of it? Rate times the first gap.
 * Assumed because 99 of 100 parts are then done by the second reading: faster cannot be told from at once.
 */
const ASSUMED_AT_ONCE_TURN = Math.log(100);
/**
 * So many rates are tried. Assumed because neighbours then differ by less than a fifth on a strand that is first looked at
 * after two minutes and lies for up to an hour, and by less than a third were two readings a second apart: close enough to
 * refine. Checked in tests/shared/chemistry/saturation.test.ts.
 */
const ASSUMED_RATES_TRIED = 48;

/** Which rates can these readings tell apart? From straight to at once, each a little faster; times in order. */
export function listRates(points: readonly Point[]): readonly number[] {
  const first = points[0]?.t ?? 0;
  const slowest = ASSUMED_STRAIGHT_TURN / ((points.at(-1)?.t ?? 0) - first);
  const fastest = ASSUMED_AT_ONCE_TURN / ((points[1]?.t ?? 0) - first);
  const grows = (fastest / slowest) ** (1 / (ASSUMED_RATES_TRIED - 1));
  return Array.from({ length: ASSUMED_RATES_TRIED }, (_, step) => slowest * grows ** step);
}

/** Which curve of this rate runs closest? A straight line in 1 − e^(−rate · t), so exact; null where they do not say. */
export function fitStraight(points: readonly Point[], rate: number): FittedSaturation | null {
  const shares = points.map(({ t, y }) => ({ share: -Math.expm1(-rate * t), y }));
  const meanShare = shares.reduce((sum, { share }) => sum + share, 0) / shares.length;
  const meanY = shares.reduce((sum, { y }) => sum + y, 0) / shares.length;
  const spread = shares.reduce((sum, { share }) => sum + (share - meanShare) ** 2, 0);
  const rise = shares.reduce((sum, { share, y }) => sum + (share - meanShare) * (y - meanY), 0) / spread;
  const curve = { base: meanY - rise * meanShare, rise, rate };
  return Number.isFinite(rise) ? { ...curve, residualSum: sumSquares(points, curve) } : null;
}
