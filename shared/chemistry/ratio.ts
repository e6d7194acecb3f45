import { accept, type Result, refuse } from '../result';
import { brand } from '../units/brand';
import type { PeroxidePercent } from './peroxide';

/** Why a ratio or a split was refused. */
export type RatioRefusal =
  | 'notFinite'
  | 'notPositive'
  | 'noParts'
  | 'tooManyParts'
  | 'tooMuch'
  | 'stepTooFine'
  | 'stepTooCoarse';

/** The most kinds in one bowl. Assumed because a formula longer than a dozen lines is a slip of the finger. */
export const ASSUMED_MAX_PARTS = 12;

/** The most that one bowl may weigh, in grams. Assumed because a bar scale and a bowl hold about a kilogram. */
export const ASSUMED_MAX_TOTAL_G = 1000;

/** Weights are reckoned in whole milligrams: finer than any bar scale, and sums of whole numbers are exact. */
const mgPerG = 1000;

export const toMg = (grams: number): number => Math.round(grams * mgPerG);
export const toG = (milligrams: number): number => milligrams / mgPerG;

/**
 * How strong is it in the bowl? "12 % bottle (40 vol), 6 % in the bowl".
 * A ratio 1 : r by mass, one part of colour to r of developer; the colour brings no peroxide. bottle × r ÷ (1 + r),
 * always weaker than the bottle, not rounded. The bowl's figure alone is read as 20 vol: never say it without the
 * bottle's. Refuses 1:0, 0:1 and whatever is no number; the ceiling is judged on the bottle, elsewhere.
 * Exact mass balance. Checked by tests/evidence/peroxide.test.ts and tests/shared/chemistry/ratio.test.ts.
 */
export function computeBowlPercent(
  bottle: PeroxidePercent,
  developerToOne: number,
): Result<PeroxidePercent, RatioRefusal> {
  if (!Number.isFinite(bottle) || !Number.isFinite(developerToOne)) return refuse('notFinite');
  if (bottle < 0 || developerToOne <= 0) return refuse('notPositive');
  return accept(brand((bottle * developerToOne) / (1 + developerToOne)));
}

/** Grams of each part, in the order asked; `remainderG` is what of the total the scale's step cannot show. */
export interface Split {
  readonly amountsG: readonly number[];
  readonly remainderG: number;
}

const sumParts = (parts: readonly number[]): number => parts.reduce((sum, part) => sum + part, 0);

/** Whole steps of the scale in the total. */
const countSteps = (totalG: number, stepG: number): number => Math.floor(toMg(totalG) / toMg(stepG));

function explainSplit(totalG: number, parts: readonly number[], stepG: number): RatioRefusal | undefined {
  if (parts.length === 0) return 'noParts';
  if (parts.length > ASSUMED_MAX_PARTS) return 'tooManyParts';
  const all = [totalG, stepG, ...parts];
  if (!all.every(Number.isFinite)) return 'notFinite';
  if (!all.every((value) => value > 0)) return 'notPositive';
  if (totalG > ASSUMED_MAX_TOTAL_G) return 'tooMuch';
  if (toMg(stepG) < 1) return 'stepTooFine';
  return countSteps(totalG, stepG) * Math.min(...parts) < sumParts(parts) ? 'stepTooCoarse' : undefined;
}

/** Parts that are typed are whole thousandths: reckoned in those, equal losses are equal and not a rounding apart. */
function toThousandths(part: number): number {
  const whole = Math.round(part * 1000);
  return Math.abs(whole - part * 1000) < 1e-6 ? whole : part * 1000;
}

/** Whole steps for each part: rounded down, then one more to those that lost most, the earlier first when equal. */
function shareSteps(steps: number, typed: readonly number[]): readonly number[] {
  const parts = typed.map(toThousandths);
  const wholeParts = sumParts(parts);
  const lost = parts.map((part) => (steps * part) % wholeParts);
  const lossAt = (index: number): number => lost[index] ?? 0;
  const floors = parts.map((part, index) => Math.round((steps * part - lossAt(index)) / wholeParts));
  const left = steps - floors.reduce((sum, floor) => sum + floor, 0);
  const mostLost = [...parts.keys()].sort((a, b) => lossAt(b) - lossAt(a)).slice(0, left);
  return floors.map((floor, index) => (mostLost.includes(index) ? floor + 1 : floor));
}

/**
 * How many grams of each?
 * Splits a total by parts (shades, developer) into amounts the scale can show, each within one step of its share of
 * what can be shown; together with the remainder they make the total, to the milligram, exactly. Refuses no parts or more than
 * twelve, zero or negative figures, over 1000 g, a step under 1 mg, and a step larger than the smallest part.
 * Checked by tests/evidence/peroxide.test.ts and tests/shared/chemistry/ratio.test.ts.
 */
export function splitByParts(
  totalG: number,
  parts: readonly number[],
  stepG: number,
): Result<Split, RatioRefusal> {
  const fault = explainSplit(totalG, parts, stepG);
  if (fault) return refuse(fault);
  const stepMg = toMg(stepG);
  const steps = countSteps(totalG, stepG);
  return accept({
    amountsG: shareSteps(steps, parts).map((share) => toG(share * stepMg)),
    remainderG: toG(toMg(totalG) - steps * stepMg),
  });
}
