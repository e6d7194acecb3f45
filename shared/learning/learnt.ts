import type { Covariates } from '../judgement/chance/covariates';
import {
  type Chance,
  type Coefficients,
  estimateChance,
  nameChance,
  toVector,
} from '../judgement/chance/estimate';
import { priorCoefficients, priorMeans, priorSds } from '../judgement/chance/prior';
import type { Result } from '../result';
import { fitLessons } from './fit';
import { type Belief, type Lesson, toShare } from './posterior';
import type { TaughtStrand } from './strandsTaught';

/** What this station's own strands taught, and how many they were. */
export interface Learnt {
  readonly coefficients: Coefficients;
  readonly strands: number;
}

/** What is assumed of each weight, as the fit takes it. */
export const priorBelief: Belief = { means: priorMeans, precisions: priorSds.map((sd) => 1 / sd ** 2) };

/**
 * A shown chance lies at most so much beside the assumed one for each strand that taught. Assumed because five strands
 * are an anecdote and are to move none by more than 15 points, while the assumed spreads alone would let them move one
 * by more than 70; from some thirty strands on it holds nothing back any more.
 */
export const ASSUMED_SHARE_A_STRAND = 0.03;

/** A strand as the fit takes it. What is not known stands at its value; its spread is not learned from. */
export const toLesson = ({
  covariates,
  hasBroken,
}: Pick<TaughtStrand, 'covariates' | 'hasBroken'>): Lesson => ({
  x: toVector(covariates),
  hasBroken,
});

/** What do these strands teach, beginning from what is assumed? Refused where the fit comes to no end. */
export function learn(
  lessons: readonly Lesson[],
  start: readonly number[] = priorMeans,
): Result<Learnt, 'noFit'> {
  const fitted = fitLessons(lessons, priorBelief, start);
  if (!fitted.ok) return fitted;
  return { ok: true, value: { coefficients: fitted.value, strands: lessons.length } };
}

/** A learned chance, no further from the assumed one than so many strands allow. */
export const holdBack = (assumed: number, learnt: number, strands: number): number => {
  const reach = ASSUMED_SHARE_A_STRAND * strands;
  return Math.min(assumed + reach, Math.max(assumed - reach, learnt));
};

const toLogOdds = (share: number): number => Math.log(share / (1 - share));

/**
 * How likely do strands like this break, by what this station's own strands taught?
 * As estimated from the learned weights, but no further from the assumed chance than the strands that taught allow; its
 * band goes with it. Shown, and nothing else: what is asked for goes by the assumed chance (shared/judgement/risk.ts).
 * Checked in tests/shared/learning/learnt.test.ts.
 */
export function estimateLearnt(covariates: Covariates, { coefficients, strands }: Learnt): Chance {
  const assumed = estimateChance(covariates, priorCoefficients).chance;
  const learnt = estimateChance(covariates, coefficients);
  const chance = holdBack(assumed, learnt.chance, strands);
  if (chance === learnt.chance) return learnt;
  const by = toLogOdds(chance) - toLogOdds(learnt.chance);
  const move = (share: number): number => toShare(toLogOdds(share) + by);
  return { ...learnt, chance, low: move(learnt.low), high: move(learnt.high), word: nameChance(chance) };
}
