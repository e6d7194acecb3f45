import { type CovariateName, type Covariates, covariateNames } from './covariates';

/** What weighs how much, and how sure that is: a prior, or what strands have taught. The base stands first. */
export interface Coefficients {
  /** Log-odds: the base, then one for each of covariateNames. */
  readonly means: readonly number[];
  /** Row by row in the same order. */
  readonly covariance: readonly (readonly number[])[];
}

/** How a chance is said. */
export type ChanceWord = 'low' | 'raised' | 'high';

/** One thing that moves the chance, and by how much: positive log-odds for breaking, negative against it. */
export interface ChanceReason {
  readonly name: CovariateName;
  readonly logOdds: number;
  /** It went beyond what was measured, and is counted as the most that was. */
  readonly isBeyond?: true;
}

/** The chance that strands like this break, from 0 to 1 and never either; an estimate, before the strand has spoken. */
export interface Chance {
  readonly chance: number;
  readonly low: number;
  readonly high: number;
  readonly word: ChanceWord;
  /** The three that weigh most, the heaviest first; what adds nothing is none of them. */
  readonly reasons: readonly ChanceReason[];
}

/** From this chance on it is raised. Assumed because one broken strand in five asks for more looks. */
export const ASSUMED_CHANCE_RAISED = 0.2;

/** From this chance on it is high. Assumed because nearly one broken strand in three asks for a second one. */
export const ASSUMED_CHANCE_HIGH = 0.3;

/** The band reaches so many standard deviations to each side. Assumed because it is to hold about eight in ten. */
export const ASSUMED_CHANCE_SDS = 1.28;

/** Beyond so many log-odds a chance could not be told from none or certain in a float. */
const LARGEST_LOG_ODDS = 30;
const REASONS = 3;

const toChance = (logOdds: number): number =>
  1 / (1 + Math.exp(-Math.max(-LARGEST_LOG_ODDS, Math.min(LARGEST_LOG_ODDS, logOdds))));

const add = (numbers: readonly number[]): number => numbers.reduce((sum, each) => sum + each, 0);

/** Which word is said of a chance? */
export function nameChance(chance: number): ChanceWord {
  if (chance >= ASSUMED_CHANCE_HIGH) return 'high';
  return chance >= ASSUMED_CHANCE_RAISED ? 'raised' : 'low';
}

/** Every covariate with the log-odds it adds, the heaviest first; what adds nothing is left out. */
export const weighCovariates = (covariates: Covariates, { means }: Coefficients): readonly ChanceReason[] =>
  covariateNames
    .map((name, index) => ({
      name,
      logOdds: (means[index + 1] ?? 0) * covariates[name].value,
      ...(covariates[name].isBeyond === true ? { isBeyond: true as const } : {}),
    }))
    .filter(({ logOdds }) => logOdds !== 0)
    .sort((one, other) => Math.abs(other.logOdds) - Math.abs(one.logOdds));

/** The values as a plain vector in the order of coefficients: one for the base, then those of covariateNames. */
export const toVector = (covariates: Covariates): readonly number[] => [
  1,
  ...covariateNames.map((name) => covariates[name].value),
];

/** Variance of the log-odds: what the coefficients leave open (xᵀCx), and what the covariates do (Σ β²s²). */
function computeVariance(covariates: Covariates, { means, covariance }: Coefficients): number {
  const x = toVector(covariates);
  const ofCoefficients = add(
    covariance.map((row, at) => (x[at] ?? 0) * add(row.map((each, column) => each * (x[column] ?? 0)))),
  );
  const ofCovariates = covariateNames.map(
    (name, index) => ((means[index + 1] ?? 0) * covariates[name].spread) ** 2,
  );
  return Math.max(0, ofCoefficients) + add(ofCovariates);
}

/**
 * How likely do strands like this break? Logistic, from what is known before the strand's own outcome; the band by
 * linear propagation in log-odds. Takes any posterior in the place of the prior.
 * An estimate, which never overrules the strand. Checked by tests/shared/judgement/chance/estimate.test.ts.
 */
export function estimateChance(covariates: Covariates, coefficients: Coefficients): Chance {
  const reasons = weighCovariates(covariates, coefficients);
  const logOdds = add([coefficients.means[0] ?? 0, ...reasons.map((reason) => reason.logOdds)]);
  const reach = ASSUMED_CHANCE_SDS * Math.sqrt(computeVariance(covariates, coefficients));
  const chance = toChance(logOdds);
  return {
    chance,
    low: toChance(logOdds - reach),
    high: toChance(logOdds + reach),
    word: nameChance(chance),
    reasons: reasons.slice(0, REASONS),
  };
}
