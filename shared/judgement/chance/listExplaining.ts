import type { Answers } from '../../records/forms/asked';
import type { Zone } from '../../records/zones';
import { type CovariateName, type Covariates, isDoseNotKnown, readCovariates } from './covariates';
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

/** Is this covariate counted as bad because somebody did not know? What was told has no spread. */
const isNotKnown = (name: CovariateName, covariates: Covariates, answers: Answers): boolean =>
  isReckoned(name) ? isDoseNotKnown(answers) : covariates[name].spread > 0;

/** Does any of these causes stand there only because it was not known? Checked as listExplaining. */
export function hasNotKnown(names: readonly CovariateName[], answers: Answers, zone: Zone): boolean {
  const covariates = readCovariates(answers, [zone]);
  return names.some((name) => isNotKnown(name, covariates, answers));
}

/**
 * What may have left metal in hair: colour from a box, henna, restorers, water of pool or well, and what nobody knows.
 * common practice, no source (training texts: EVIDENCE.md §9).
 */
const mayLeaveMetal = [
  'unknown',
  'boxColour',
  'unknownBoxColour',
  'henna',
  'compoundHenna',
  'metallicColour',
  'poolWater',
  'wellWater',
] as const;

/**
 * Are metal salts worth a line of their own? Where such a history is told, or nothing that was told explains it; not
 * where they stand among what explains it already. Checked as listExplaining.
 */
export const isMetalPossible = ({ hotTools }: Answers, explaining: readonly CovariateName[]): boolean =>
  !explaining.includes('strangeColour') &&
  (explaining.length === 0 ||
    (hotTools?.history ?? []).some((each) => mayLeaveMetal.some((metal) => metal === each)));
