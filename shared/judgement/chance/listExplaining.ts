import type { Answers } from '../../records/forms/asked';
import type { Zone } from '../../records/zones';
import { type CovariateName, readCovariates } from './covariates';
import { weighCovariates } from './estimate';
import { priorCoefficients } from './prior';

/** A figure reckoned along the strand: it stands for habits and bleach, which are told by themselves. */
const isReckoned = (name: CovariateName): boolean => name === 'helixLost' || name === 'tryptophanLost';

/**
 * So little of the worst explains nothing by itself, log-odds. Assumed because dry ironing now and then leaves that much
 * on nearly every head.
 */
export const ASSUMED_EXPLAINS_FROM = 0.2;

/**
 * What of all she told and what was felt can explain that the strand of this zone broke, the heaviest first?
 * Weighed as the chance is, at the weakest place of that zone; heat along the strand only where no habit already says
 * it. Never a cause that is certain. Checked by tests/shared/judgement/chance/listExplaining.test.ts.
 */
export function listExplaining(answers: Answers, zone: Zone): readonly CovariateName[] {
  const heavy = weighCovariates(readCovariates(answers, [zone]), priorCoefficients)
    .filter(({ logOdds }) => logOdds >= ASSUMED_EXPLAINS_FROM)
    .map(({ name }) => name);
  const told = heavy.filter((name) => !isReckoned(name));
  return told.includes('ironedWet') ? told : heavy.filter((name) => name !== 'tryptophanLost');
}
