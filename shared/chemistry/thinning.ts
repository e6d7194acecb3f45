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
  | 'bothWeaker'
  | 'bothStronger'
  | 'notPositive'
  | 'tooMuch'
  | 'stepTooCoarse';

/** Grams of each bottle; not rounded, and together the total. */
export interface Thinned {
  readonly strongG: number;
  readonly weakG: number;
}

/** What the scale can show of a thinning: grams on its steps, and how strong they are together. */
export interface ThinnedOnScale extends Thinned {
  readonly madePercent: number;
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
  if (wantedPercent > strongPercent) return 'bothWeaker';
  if (wantedPercent < weakPercent) return 'bothStronger';
  if (totalG <= 0) return 'notPositive';
  return totalG > ASSUMED_MAX_TOTAL_G ? 'tooMuch' : undefined;
}

/**
 * How much of each bottle makes the strength I want?
 * 40 and 20 vol, one to one, make 30. Only with a weaker developer of the same line: water and a base of none are
 * refused (traces of copper and iron in tap water decompose peroxide: published chemistry; never stored thinned:
 * common practice, no source). Refuses a bottle over 12 %, a wish outside the two bottles, and over 1000 g.
 * Not rounded: `thinOnScale` does that. Checked by tests/evidence/peroxide.test.ts.
 */
export function thinDeveloper(asked: Thinning): Result<Thinned, ThinningRefusal> {
  const fault = explainThinning(asked);
  if (fault) return refuse(fault);
  const strongG = asked.totalG * computeStrongShare(asked);
  return accept({ strongG, weakG: asked.totalG - strongG });
}

/** Per cent as a whole number too, so that a floor is one: a millionth of a per cent. */
const toMillionths = (percent: number): number => Math.round(percent * 1_000_000);

/**
 * How much of each bottle on this scale, and how strong is that?
 * Whole steps of the scale, never more than the total. The stronger bottle is rounded down and the weaker one fills up,
 * so what is weighed is never stronger than what is wanted; `madePercent` is the mass balance of what is weighed, grams
 * and per cent, not rounded. Refuses what `thinDeveloper` refuses, and a step that shows nothing of the stronger bottle
 * where some is needed. Checked by tests/shared/chemistry/thinning.test.ts and tests/evidence/peroxide.test.ts.
 */
export function thinOnScale(asked: Thinning, stepG: number): Result<ThinnedOnScale, ThinningRefusal> {
  const fault = explainThinning(asked);
  if (fault) return refuse(fault);
  const stepMg = toMg(stepG);
  const steps = stepMg >= 1 ? Math.floor(toMg(asked.totalG) / stepMg) : 0;
  const weak = toMillionths(asked.weakPercent);
  const over = toMillionths(asked.wantedPercent) - weak;
  const between = toMillionths(asked.strongPercent) - weak;
  const strongSteps = Math.floor((steps * over) / between);
  if (steps === 0 || (strongSteps === 0 && over > 0)) return refuse('stepTooCoarse');
  const strongG = toG(strongSteps * stepMg);
  const weakG = toG((steps - strongSteps) * stepMg);
  const isExact = strongSteps * between === steps * over;
  const made = (weak * steps + between * strongSteps) / steps / 1_000_000;
  return accept({ strongG, weakG, madePercent: isExact ? asked.wantedPercent : made });
}
