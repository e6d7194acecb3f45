import { accept, type Result, refuse } from '../result';
import { solveSmall } from './solveSmall';

/** One reading: `y` at the time `t`, in whatever units. */
export interface Point {
  readonly t: number;
  readonly y: number;
}

/** y(t) = base + rise · (1 − e^(−rate · t)): quick at first, slower and slower, never past base + rise. */
export interface Saturation {
  readonly base: number;
  readonly rise: number;
  readonly rate: number;
}

export interface FittedSaturation extends Saturation {
  /** Sum of the squared misses. */
  readonly residualSum: number;
}

/** So many steps at most: the certified problems take a dozen, and a phone must never wait on one that wanders. */
const MOST_STEPS = 400;
/** A step that moves no parameter by more than this share of itself is the last one: two figures past the certified. */
const SETTLED = 1e-11;
/** By this share the sum of squares may seem to grow: so much of it is rounding, and the step is still the better one. */
const ROUNDING = 1e-13;

/** How high does the curve stand at `t`? Exact to a double; finite for every finite t ≥ 0 and rate ≥ 0. */
export const readSaturation = ({ base, rise, rate }: Saturation, t: number): number =>
  base - rise * Math.expm1(-rate * t);

/** By how much does the curve miss the readings: the sum of the squares. */
export const sumSquares = (points: readonly Point[], curve: Saturation): number =>
  points.reduce((sum, { t, y }) => sum + (y - readSaturation(curve, t)) ** 2, 0);

/**
 * Which saturating curve runs closest to these readings, from this start?
 * Least squares by Levenberg and Marquardt (from memory: Marquardt, J. Soc. Ind. Appl. Math. 11:431–441, 1963), the
 * slopes exact; `base` is fitted too, or held as it is. Refused where the steps run out or the numbers do. Checked on
 * NIST StRD Misra1a, both starts, 8 significant digits, in tests/evidence/liftCurve.test.ts.
 */
export function fitSaturation(
  points: readonly Point[],
  start: Saturation,
  isBaseHeld: boolean,
): Result<FittedSaturation, 'noFit'> {
  let curve = start;
  let residualSum = sumSquares(points, curve);
  let damping = 1e-3;
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const next = takeStep(points, curve, damping, isBaseHeld);
    const nextSum = next === null ? Number.NaN : sumSquares(points, next);
    if (next !== null && nextSum <= residualSum * (1 + ROUNDING)) {
      const isSettled = hasSettled(curve, next);
      curve = next;
      residualSum = nextSum;
      if (isSettled) return accept({ ...curve, residualSum });
      damping = Math.max(damping / 10, 1e-12);
    } else {
      // No step however short makes it better: this is as close as doubles come.
      if (damping > 1e12) return settle(curve, residualSum);
      damping *= 10;
    }
  }
  return refuse('noFit');
}

const settle = (curve: Saturation, residualSum: number): Result<FittedSaturation, 'noFit'> =>
  Number.isFinite(residualSum) ? accept({ ...curve, residualSum }) : refuse('noFit');

const hasSettled = (curve: Saturation, next: Saturation): boolean =>
  (['base', 'rise', 'rate'] as const).every(
    (name) => Math.abs(next[name] - curve[name]) <= SETTLED * Math.abs(next[name]),
  );

/** The curve one damped Gauss-Newton step further; null where the readings do not say which way. */
function takeStep(
  points: readonly Point[],
  curve: Saturation,
  damping: number,
  isBaseHeld: boolean,
): Saturation | null {
  const size = isBaseHeld ? 2 : 3;
  const matrix = Array.from({ length: size }, () => Array<number>(size).fill(0));
  const right = Array<number>(size).fill(0);
  for (const { t, y } of points) {
    const left = Math.exp(-curve.rate * t);
    const slopes = [-Math.expm1(-curve.rate * t), curve.rise * t * left, 1].slice(0, size);
    const miss = y - readSaturation(curve, t);
    for (const [row, slope] of slopes.entries()) {
      right[row] = (right[row] ?? 0) + slope * miss;
      const cells = matrix[row] ?? [];
      for (const [column, other] of slopes.entries()) cells[column] = (cells[column] ?? 0) + slope * other;
    }
  }
  const damped = matrix.map((cells, row) =>
    cells.map((cell, column) => (row === column ? cell * (1 + damping) : cell)),
  );
  const moved = solveSmall(damped, right);
  if (moved === null) return null;
  const [rise = 0, rate = 0, base = 0] = moved;
  return { base: curve.base + base, rise: curve.rise + rise, rate: curve.rate + rate };
}
