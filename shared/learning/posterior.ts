/** One strand as it teaches: what was known before it (1 for the base, then each thing), and whether it broke. */
export interface Lesson {
  readonly x: readonly number[];
  readonly hasBroken: boolean;
}

/** What was believed before any lesson: each coefficient a bell by itself. A precision (1/σ²) of 0 believes nothing. */
export interface Belief {
  readonly means: readonly number[];
  readonly precisions: readonly number[];
}

/** How well coefficients fit lessons and belief, and which way is better. */
export interface Weighed {
  /** Log of likelihood times prior, less what does not move. */
  readonly logPosterior: number;
  readonly gradient: readonly number[];
  /** The negative Hessian, of which only the lower triangle is filled: positive where anything is said at all. */
  readonly curvature: readonly (readonly number[])[];
}

/** ln(1 + e^z) without overflow. */
const softPlus = (z: number): number => Math.max(z, 0) + Math.log1p(Math.exp(-Math.abs(z)));

/** The chance that belongs to these log-odds; exact to a double, and never beyond 0 or 1. */
export const toShare = (logOdds: number): number => 1 / (1 + Math.exp(-logOdds));

/** x · coefficients. */
export function addUp(x: readonly number[], means: readonly number[]): number {
  let sum = 0;
  for (let at = 0; at < means.length; at += 1) sum += (x[at] ?? 0) * (means[at] ?? 0);
  return sum;
}

/** How far do these lessons speak against these coefficients? −log likelihood, summed; natural logarithms. */
export const sumLogLoss = (lessons: readonly Lesson[], means: readonly number[]): number => {
  let sum = 0;
  for (const { x, hasBroken } of lessons) {
    const logOdds = addUp(x, means);
    sum += softPlus(hasBroken ? -logOdds : logOdds);
  }
  return sum;
};

/**
 * How well do these coefficients fit what was believed and what strands said?
 * Bernoulli likelihood of a logistic chance times Gaussian prior, with its slopes and curvature, all exact. Checked
 * against slopes by differences in tests/shared/learning/fit.test.ts.
 */
export function weighCoefficients(
  lessons: readonly Lesson[],
  { means: believed, precisions }: Belief,
  means: readonly number[],
): Weighed {
  const size = means.length;
  const off = means.map((mean, at) => mean - (believed[at] ?? 0));
  const gradient = off.map((by, at) => -(precisions[at] ?? 0) * by);
  const curvature = precisions.map((precision, row) => {
    const cells = Array<number>(size).fill(0);
    cells[row] = precision;
    return cells;
  });
  for (const { x, hasBroken } of lessons) {
    const share = toShare(addUp(x, means));
    const miss = (hasBroken ? 1 : 0) - share;
    const weight = share * (1 - share);
    for (let row = 0; row < size; row += 1) {
      const value = x[row] ?? 0;
      if (value === 0) continue;
      gradient[row] = (gradient[row] ?? 0) + miss * value;
      const cells = curvature[row] ?? [];
      for (let column = 0; column <= row; column += 1) {
        cells[column] = (cells[column] ?? 0) + weight * value * (x[column] ?? 0);
      }
    }
  }
  const belief = off.reduce((sum, by, at) => sum + (precisions[at] ?? 0) * by * by, 0) / 2;
  return { logPosterior: -sumLogLoss(lessons, means) - belief, gradient, curvature };
}
