import { accept, type Result, refuse } from '../result';
import { brand } from '../units/brand';
import { isWithinCeiling, type PeroxidePercent } from './peroxide';
import { ASSUMED_MAX_TOTAL_G, toG, toMg } from './ratio';

/** Two developers of the same line, and what is wanted of them. Per cent as on the label. */
export interface Thinning {
  readonly strongPercent: number;
  readonly weakPercent: number;
  readonly wantedPercent: number;
  readonly totalG: number;
}

/** Why a thinning was refused. */
export type ThinningRefusal =
  | 'notFinite'
  | 'notADeveloper'
  | 'overCeiling'
  | 'notWeaker'
  | 'outsideBottles'
  | 'notPositive'
  | 'tooMuch';

/** Grams of each bottle; not rounded, and together the total. */
export interface Thinned {
  readonly strongG: number;
  readonly weakG: number;
}

/**
 * Which share of the mix is the stronger bottle?
 * Mass balance: (wanted − weak) ÷ (strong − weak), exact and blind to what the weaker one is, so it also answers for
 * a base of 0 %. Label per cent is taken as by mass. Equal bottles have no answer: not a number or not finite.
 * Checked by tests/evidence/peroxide.test.ts.
 */
export const computeStrongShare = ({
  strongPercent,
  weakPercent,
  wantedPercent,
}: Omit<Thinning, 'totalG'>): number => (wantedPercent - weakPercent) / (strongPercent - weakPercent);

function explainThinning(asked: Thinning): ThinningRefusal | undefined {
  const { strongPercent, weakPercent, wantedPercent, totalG } = asked;
  if (![strongPercent, weakPercent, wantedPercent, totalG].every(Number.isFinite)) return 'notFinite';
  if (weakPercent <= 0) return 'notADeveloper';
  if (![strongPercent, weakPercent].every((each) => isWithinCeiling(brand<PeroxidePercent>(each)))) {
    return 'overCeiling';
  }
  if (weakPercent >= strongPercent) return 'notWeaker';
  if (wantedPercent < weakPercent || wantedPercent > strongPercent) return 'outsideBottles';
  if (totalG <= 0) return 'notPositive';
  return totalG > ASSUMED_MAX_TOTAL_G ? 'tooMuch' : undefined;
}

/**
 * How much of each bottle makes the strength I want?
 * 40 and 20 vol, one to one, make 30. Only with a weaker developer of the same line: water and a base of none are
 * refused (traces of copper and iron in tap water decompose peroxide: published chemistry; never stored thinned:
 * common practice, no source). Refuses a bottle over 12 %, a wish outside the two bottles, and over 1000 g.
 * Not rounded: see `weighThinned`. Checked by tests/evidence/peroxide.test.ts.
 */
export function thinDeveloper(asked: Thinning): Result<Thinned, ThinningRefusal> {
  const fault = explainThinning(asked);
  if (fault) return refuse(fault);
  const strongG = asked.totalG * computeStrongShare(asked);
  return accept({ strongG, weakG: asked.totalG - strongG });
}

/** Grams of each bottle on the scale's step, and what they make together. */
export interface Weighed extends Thinned {
  readonly makesPercent: PeroxidePercent;
}

/**
 * The same, as a scale of this step shows it: the stronger bottle rounded down, the weaker one the rest, so that it never
 * comes out stronger than what was wanted. `totalG` has to lie on the step, as the developer of a mixture does; so little
 * that a step is all of it is refused. Checked by tests/shared/chemistry/thinning.test.ts.
 */
export function weighThinned(asked: Thinning, stepG: number): Result<Weighed, ThinningRefusal> {
  const exact = thinDeveloper(asked);
  if (!exact.ok) return exact;
  const toSteps = (grams: number): number => grams / stepG;
  const steps = Math.round(toSteps(asked.totalG));
  // A thousandth of a step is what floats lose, not what a scale shows.
  const strongSteps = Math.floor(toSteps(exact.value.strongG) + 1e-3);
  const strongG = toG(strongSteps * toMg(stepG));
  const weakG = toG((steps - strongSteps) * toMg(stepG));
  const makes = (strongG * asked.strongPercent + weakG * asked.weakPercent) / (strongG + weakG);
  return accept({ strongG, weakG, makesPercent: brand<PeroxidePercent>(makes) });
}
