import type { Answers } from '../../records/forms/asked';
import { readCovariates } from './covariates';
import { type Chance, estimateChance } from './estimate';
import { priorCoefficients } from './prior';

/** Answers are never changed in place, and are judged again at every tap: what was reckoned of them once is kept. */
const reckoned = new WeakMap<Answers, Chance>();

/**
 * How likely do strands like hers break, by her answers and what is assumed of each, before any strand has spoken?
 * Checked by tests/shared/judgement/chance/covariates.test.ts.
 */
export function judgeChance(answers: Answers): Chance {
  const known = reckoned.get(answers);
  if (known !== undefined) return known;
  const chance = estimateChance(readCovariates(answers), priorCoefficients);
  reckoned.set(answers, chance);
  return chance;
}
