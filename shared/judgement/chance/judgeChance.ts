import type { Answers } from '../../records/forms/asked';
import { readCovariates } from './covariates';
import { type Chance, estimateChance } from './estimate';
import { priorCoefficients } from './prior';

/**
 * How likely do strands like hers break, by her answers and what is assumed of each, before any strand has spoken?
 * Checked by tests/shared/judgement/chance/covariates.test.ts.
 */
export const judgeChance = (answers: Answers): Chance =>
  estimateChance(readCovariates(answers), priorCoefficients);
