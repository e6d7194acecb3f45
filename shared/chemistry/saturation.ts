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

/**
 * So many steps at most. Assumed because Misra1a takes 33 from the start that is far off, level paths on the usual
 * looks 62 at most, and nobody waits for one that wanders.
 */
const ASSUMED_MOST_STEPS = 200;
/** A last step moves no parameter by more than this share of itself. Assumed because it is two figures past the certified. */
const ASSUMED_SETTLED_SHARE = 1e-11;
/**
 * Or it lowers the sum of squares by no more than this share of it. Assumed because the curve then moves by about the
 * root of it: far less than half a level.
 */
const ASSUMED_SETTLED_SUM_SHARE = 1e-12;
/** By this share the sum of squares may seem to grow. Assumed because so much of it is rounding of doubles. */
const ASSUMED_ROUNDING_SHARE = 1e-13;
/** How far a step is damped at first. Assumed because the start is the best of a row of rates already: almost not. */
const ASSUMED_FIRST_DAMPING = 1e-3;
/** And at least. Assumed because less changes no digit of a double that counts here. */
const ASSUMED_LEAST_DAMPING = 1e-12;
/** And at most. Assumed because a step so short moves nothing that a double can hold. */
const ASSUMED_MOST_DAMPING = 1e12;
/** After a step that gained what it promised, no less than this share of the damping: from memory, Nielsen as below. */
const LEAST_DAMPING_LEFT = 1 / 3;

/** How high does the curve stand at `t`? Exact to a double; finite for every finite t ≥ 0 and rate ≥ 0. */
export const readSaturation = ({ base, rise, rate }: Saturation, t: number): number =>
  base - rise * Math.expm1(-rate * t);

/** By how much does the curve miss the readings: the sum of the squares. */
export const sumSquares = (points: readonly Point[], curve: Saturation): number =>
  points.reduce((sum, { t, y }) => sum + (y - readSaturation(curve, t)) ** 2, 0);

/**
 * Which saturating curve runs closest to these readings, from this start?
 * Least squares by Levenberg and Marquardt (from memory: Marquardt, J. Soc. Ind. Appl. Math. 11:431–441, 1963), the
 * slopes exact, the damping led by how much of what it promised a step gained (from memory: Nielsen, Damping parameter
 * in Marquardt's method, IMM-REP-1999-05, 1999); `base` is fitted too, or held as it is. Refused where the steps run out
 * or the numbers do. Checked on NIST StRD Misra1a in tests/evidence/liftCurve.test.ts: with `base` held to the certified
 * figures, free to our own; that it comes to an end, in tests/shared/chemistry/saturation.test.ts.
 */
export function fitSaturation(
  points: readonly Point[],
  start: Saturation,
  isBaseHeld: boolean,
): Result<FittedSaturation, 'noFit'> {
  let curve = start;
  let residualSum = sumSquares(points, curve);
  let damping = ASSUMED_FIRST_DAMPING;
  let grows = 2;
  for (let step = 0; step < ASSUMED_MOST_STEPS; step += 1) {
    const next = takeStep(points, curve, damping, isBaseHeld);
    const nextSum = next === null ? Number.NaN : sumSquares(points, next.curve);
    if (next !== null && nextSum <= residualSum * (1 + ASSUMED_ROUNDING_SHARE)) {
      const fall = residualSum - nextSum;
      const isSettled = hasSettled(curve, next.curve) || fall <= residualSum * ASSUMED_SETTLED_SUM_SHARE;
      curve = next.curve;
      residualSum = nextSum;
      if (isSettled) return settle(curve, residualSum);
      damping = Math.max(damping * leaveDamping(fall / next.promised), ASSUMED_LEAST_DAMPING);
      grows = 2;
    } else {
      // No step however short makes it better: this is as close as doubles come.
      if (damping > ASSUMED_MOST_DAMPING) return settle(curve, residualSum);
      damping *= grows;
      grows *= 2;
    }
  }
  return refuse('noFit');
}

/** Which share of the damping stays after a step that gained this share of what it promised? More than 1 after a poor one. */
const leaveDamping = (gained: number): number => Math.max(LEAST_DAMPING_LEFT, 1 - (2 * gained - 1) ** 3);

const settle = (curve: Saturation, residualSum: number): Result<FittedSaturation, 'noFit'> =>
  Number.isFinite(residualSum) ? accept({ ...curve, residualSum }) : refuse('noFit');

const hasSettled = (curve: Saturation, next: Saturation): boolean =>
  (['base', 'rise', 'rate'] as const).every(
    (name) => Math.abs(next[name] - curve[name]) <= ASSUMED_SETTLED_SHARE * Math.abs(next[name]),
  );

/** One damped Gauss-Newton step. */
interface Step {
  readonly curve: Saturation;
  /** By how much the sum of squares would fall if the curve were straight in its parameters. */
  readonly promised: number;
}

/** The curve one such step further; null where the readings do not say which way. */
function takeStep(
  points: readonly Point[],
  curve: Saturation,
  damping: number,
  isBaseHeld: boolean,
): Step | null {
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
  const promised = moved.reduce(
    (sum, by, row) => sum + by * ((right[row] ?? 0) + damping * (matrix[row]?.[row] ?? 0) * by),
    0,
  );
  return { curve: { base: curve.base + base, rise: curve.rise + rise, rate: curve.rate + rate }, promised };
}
