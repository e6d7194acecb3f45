import { accept, type Result, refuse } from '../result';

/**
 * One thing that goes into the bowl. `wantedG` is what the scale was asked for. `mayBe` tells on which side of it a hand
 * may stay: the stronger of two bottles is never more, the weaker one never less, everything else either.
 */
export interface ToWeigh {
  readonly wantedG: number;
  readonly mayBe: 'either' | 'less' | 'more';
}

/** How it stands at the scale, each list in the order of what goes in; grams on the scale's step. */
export interface WeighIn {
  /** How much of each it becomes, now that some of it may be too much. */
  readonly targetG: readonly number[];
  /** How much of each is still to go in; 0 where there is enough. */
  readonly leftG: readonly number[];
  readonly totalG: number;
  /** By how much all of it grew; 1 where nothing was too much. */
  readonly grewBy: number;
  /** Which comes next; null once all is in. */
  readonly next: number | null;
}

/** Why it cannot be weighed in. */
export type WeighInRefusal = 'notFinite' | 'notPositive' | 'tooMuch';

/**
 * How far beside what was wanted a hand may stay, as a share of it. Assumed because a fiftieth is what a drop from a tube
 * comes to, and is less than half of what the ratio may shift.
 */
export const ASSUMED_HAND_OFF_SHARE = 0.02;

/** Figures of a scale are equal when they differ by less than this share of its step: rounding, nothing more. */
const EQUAL = 1e-6;

/**
 * What the scale says so far: what else goes in?
 * Where one thing went in too far, everything grows with it, so that parts and ratio stay as they were wanted; what was
 * right before is then topped up. What is short is still to go in. Grams; `inG` in the order of `items`, 0 for what has
 * not been weighed. Refuses a figure that is none, less than nothing, and a bowl over `mostG`. Of two bottles the
 * stronger is never over and the weaker never under, so together they are never stronger than wanted.
 * Exact mass balance. Checked by tests/shared/chemistry/weighIn.test.ts.
 */
export function weighIn(
  items: readonly ToWeigh[],
  inG: readonly number[],
  { stepG, mostG }: { readonly stepG: number; readonly mostG: number },
): Result<WeighIn, WeighInRefusal> {
  const isIn = (index: number): number => inG[index] ?? 0;
  const all = [...items.map(({ wantedG }) => wantedG), ...inG, stepG, mostG];
  if (!all.every(Number.isFinite)) return refuse('notFinite');
  if (stepG <= 0 || items.some(({ wantedG }) => wantedG <= 0) || inG.some((grams) => grams < 0)) {
    return refuse('notPositive');
  }
  const grewBy = findGrowth(
    items,
    items.map((_, index) => isIn(index)),
    stepG,
  );
  const targetG = items.map((item) => onStep(item, item.wantedG * grewBy, stepG));
  const leftG = items.map((item, index) => findLeft(item, targetG[index] ?? 0, isIn(index), stepG));
  const totalG = items.reduce((sum, _, index) => sum + isIn(index) + (leftG[index] ?? 0), 0);
  if (totalG > mostG) return refuse('tooMuch');
  const next = leftG.findIndex((grams) => grams > 0);
  return accept({ targetG, leftG, totalG, grewBy, next: next === -1 ? null : next });
}

/** The least growth of all with which nothing is too much. */
function findGrowth(items: readonly ToWeigh[], inG: readonly number[], stepG: number): number {
  const growths = items.map(({ wantedG }, index) => (inG[index] ?? 0) / wantedG);
  const largest = Math.max(1, ...growths);
  const isEnough = (growth: number): boolean =>
    items.every((item, index) => !isTooMuch(item, inG[index] ?? 0, growth, stepG));
  return (
    [1, ...growths.filter((growth) => growth > 1).sort((one, other) => one - other)].find(isEnough) ?? largest
  );
}

function isTooMuch(item: ToWeigh, inG: number, growth: number, stepG: number): boolean {
  const grownG = item.wantedG * growth;
  const mostG =
    item.mayBe === 'less'
      ? grownG
      : Math.max(grownG * (1 + ASSUMED_HAND_OFF_SHARE), onStep(item, grownG, stepG));
  return inG > mostG + stepG * EQUAL;
}

/** On a whole step of the scale: the stronger bottle down, the weaker one up, everything else to the nearest. */
function onStep({ mayBe }: ToWeigh, grams: number, stepG: number): number {
  const steps = grams / stepG;
  if (mayBe === 'less') return Math.floor(steps + EQUAL) * stepG;
  return (mayBe === 'more' ? Math.ceil(steps - EQUAL) : Math.round(steps)) * stepG;
}

/** What is still to go in: nothing where a hand may stay under by so much, or where the scale could not show it. */
function findLeft({ mayBe }: ToWeigh, targetG: number, inG: number, stepG: number): number {
  const left = targetG - inG;
  const enough = mayBe === 'more' ? stepG * EQUAL : Math.max(targetG * ASSUMED_HAND_OFF_SHARE, stepG / 2);
  return left > enough || (inG === 0 && targetG > 0) ? left : 0;
}
