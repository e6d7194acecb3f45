import { type CovariateName, covariateNames } from './covariates';
import type { Coefficients } from './estimate';

/** What one thing adds to the log-odds at its worst, and how far that may be off (standard deviation). */
interface Weight {
  readonly mean: number;
  readonly sd: number;
}

/**
 * Log-odds that a strand of hair with nothing against it breaks: about one in twenty-five.
 * Assumed because a mix within the maker's directions rarely breaks such hair, and nobody counted how rarely.
 */
export const ASSUMED_BASE: Weight = { mean: -3.2, sd: 0.5 };

/**
 * What does each thing that weakens hair add, before this station's own strands have taught better? Log-odds at its
 * worst. Assumed because nothing published weighs them against each other; of each:
 * - helixLost: what carries the wet fibre; but far beyond what was measured, so it weighs less than what a hand finds
 * - tryptophanLost: marks heat and carries no load, and is blind to water
 * - ironedWet: a water-based spray doubled the loss of break stress (Christian et al., J. Cosmet. Sci. 62:15–27, 2011,
 *   Table III, sprays before an iron), and water under a plate is worse than a spray
 * - scorched: it was hotter than any setting that was told
 * - bleaches: at four of them; each takes its share of the helix (Wortmann et al., J. Cosmet. Sci. 53:219–228, 2002),
 *   and peroxide finds a fibre that is open
 * - curlLost: its shape went with its bonds
 * - slowStretch: the nearest to a strand test that can be had before it
 * - porous: it drinks more of the mix; alone it says little
 * - breakage: it breaks already, without any mix
 * - veryHot: set past where the cortex softens; most of it is in the helix already
 * - smoothing: acid and a hot plate; what was in it is seldom known
 * - relaxer: breaks the bonds that lightener breaks again
 * - strangeColour: metal salts and colour nobody knows can heat and break hair in peroxide; the glass stands before it
 */
export const ASSUMED_WEIGHTS: Readonly<Record<CovariateName, Weight>> = {
  helixLost: { mean: 0.8, sd: 0.4 },
  tryptophanLost: { mean: 0.4, sd: 0.3 },
  ironedWet: { mean: 0.9, sd: 0.4 },
  scorched: { mean: 0.8, sd: 0.4 },
  bleaches: { mean: 1.4, sd: 0.5 },
  curlLost: { mean: 0.6, sd: 0.3 },
  slowStretch: { mean: 1.3, sd: 0.5 },
  porous: { mean: 0.5, sd: 0.3 },
  breakage: { mean: 1.1, sd: 0.4 },
  veryHot: { mean: 0.4, sd: 0.3 },
  smoothing: { mean: 0.3, sd: 0.3 },
  relaxer: { mean: 0.9, sd: 0.4 },
  strangeColour: { mean: 0.4, sd: 0.4 },
};

const weights: readonly Weight[] = [ASSUMED_BASE, ...covariateNames.map((name) => ASSUMED_WEIGHTS[name])];

/** Means of the prior, the base first, then in the order of covariateNames. */
export const priorMeans: readonly number[] = weights.map(({ mean }) => mean);

/** Standard deviations of the prior, in the same order; each independent of the others. */
export const priorSds: readonly number[] = weights.map(({ sd }) => sd);

/** The prior as coefficients: nothing off the diagonal. */
export const priorCoefficients: Coefficients = {
  means: priorMeans,
  covariance: priorSds.map((sd, row) => priorSds.map((_, column) => (row === column ? sd ** 2 : 0))),
};
