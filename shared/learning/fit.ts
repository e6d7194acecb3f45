import { accept, type Result, refuse } from '../result';
import { factorise, invertBy, solveBy } from './cholesky';
import { type Belief, type Lesson, sumLogLoss, type Weighed, weighCoefficients } from './posterior';

/** What lessons taught: the likeliest coefficients, and how far they may be off together. */
export interface Fitted {
  readonly means: readonly number[];
  /** Laplace: the inverse of the negative Hessian at the likeliest coefficients. */
  readonly covariance: readonly (readonly number[])[];
  readonly steps: number;
}

/** So many steps at most. Assumed because a fit takes about six, and one that wanders has no end. */
const ASSUMED_MOST_NEWTON_STEPS = 60;
/** So often a step is halved at most. Assumed because a thousandth of a step that still does harm leads nowhere. */
const ASSUMED_MOST_HALVINGS = 30;
/** A last step moves no coefficient by more than this, log-odds. Assumed because Newton's next one is its square. */
const ASSUMED_SETTLED_LOG_ODDS = 1e-9;
/** By this share the posterior may seem to fall. Assumed because so much of it is rounding of a long sum. */
const ASSUMED_SUM_ROUNDING = 1e-12;

/**
 * Which coefficients are the likeliest after these lessons, and how sure?
 * Maximum a posteriori by Newton's method with step halving; the logistic posterior has one top, and with a belief about
 * every coefficient it always has one. Refused where it has none (all precisions 0 and lessons that can be told apart
 * without a fault), or steps or numbers run out. Checked on the O-ring flights in tests/evidence/learning.test.ts, and
 * against an independent optimiser in tests/shared/learning/fit.test.ts.
 */
export function fitLessons(
  lessons: readonly Lesson[],
  belief: Belief,
  start: readonly number[] = belief.means,
): Result<Fitted, 'noFit'> {
  let means = start;
  for (let steps = 0; steps < ASSUMED_MOST_NEWTON_STEPS; steps += 1) {
    const weighed = weighCoefficients(lessons, belief, means);
    const factor = factorise(weighed.curvature);
    if (factor === null) return refuse('noFit');
    const move = solveBy(factor, weighed.gradient);
    const longest = Math.max(...move.map(Math.abs));
    if (longest <= ASSUMED_SETTLED_LOG_ODDS) return accept({ means, covariance: invertBy(factor), steps });
    const next = climb(lessons, belief, means, move, weighed);
    if (next === null) return refuse('noFit');
    means = next;
  }
  return refuse('noFit');
}

/** As much of the move as does not lead down; null where nothing of it does any good. */
function climb(
  lessons: readonly Lesson[],
  belief: Belief,
  means: readonly number[],
  move: readonly number[],
  { logPosterior }: Pick<Weighed, 'logPosterior'>,
): readonly number[] | null {
  const least = logPosterior - ASSUMED_SUM_ROUNDING * Math.abs(logPosterior);
  for (let halvings = 0, share = 1; halvings <= ASSUMED_MOST_HALVINGS; halvings += 1, share /= 2) {
    const next = means.map((mean, at) => mean + share * (move[at] ?? 0));
    if (weighHeight(lessons, belief, next) >= least) return next;
  }
  return null;
}

/** The log posterior alone: what a halved step is judged by. */
const weighHeight = (
  lessons: readonly Lesson[],
  { means: believed, precisions }: Belief,
  means: readonly number[],
): number =>
  -sumLogLoss(lessons, means) -
  means.reduce((sum, mean, at) => sum + (precisions[at] ?? 0) * (mean - (believed[at] ?? 0)) ** 2, 0) / 2;
