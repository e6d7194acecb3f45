import { isWithinCeiling, type PeroxidePercent } from '../chemistry/peroxide';
import {
  ASSUMED_MAX_TOTAL_G,
  computeBowlPercent,
  type RatioRefusal,
  splitByParts,
  toG,
  toMg,
} from '../chemistry/ratio';
import type { BowlAnswers } from '../records/forms/bowl';
import type { StrandAnswers } from '../records/forms/test';
import type { Zone } from '../records/zones';
import { accept, type Result, refuse } from '../result';
import { brand } from '../units/brand';
import { isHotter, isSameLine, type Mix } from './mixes';
import { isOnScalp } from './onScalp';
import { isIssued, type MixPermit, type TestPermit, type TonerPermit } from './permit';

/** What is asked of the scale. */
export type Order = Mix & Pick<BowlAnswers, 'shades' | 'colourG'> & { readonly zone: Zone };

/** What is asked of the scale for a strand: its grams are colour and developer together. */
export const orderForStrand = ({
  zone,
  line,
  developerPercent,
  ratio,
  heat,
  minutes,
  testG,
}: Mix & Pick<StrandAnswers, 'zone' | 'testG'>): Order => ({
  ...{ zone, line, developerPercent, ratio, heat, minutes },
  shades: [{ shade: '', parts: 1 }],
  colourG: testG / (1 + ratio),
});

/** What to weigh, and how it is said: "12 % bottle (40 vol), 6 % in the bowl". */
export interface Mixture {
  readonly shades: readonly { readonly shade: string; readonly amountG: number }[];
  readonly developerG: number;
  readonly totalG: number;
  /** What the scale's step cannot show of the colour. */
  readonly remainderG: number;
  /** How much more developer the scale's step makes it than the ratio asks for, g; less is below zero. */
  readonly developerOffG: number;
  readonly bottlePercent: PeroxidePercent;
  readonly bowlPercent: PeroxidePercent;
}

/** Why this is not mixed. `most` is what the permit allows. */
export type MixtureRefusal =
  | { readonly code: 'forged' | 'anotherZone' | 'anotherLine' | 'anotherRatio' | 'hotter' | 'overCeiling' }
  | { readonly code: 'stronger' | 'overHouseCeiling' | 'longer' | 'tooMuchForAStrand'; readonly most: number }
  | { readonly code: RatioRefusal };

/** How strong may this order be? What was tested in foil and goes on without lies on the scalp. */
const findStrongest = (permit: MixPermit | TonerPermit, { heat }: Order): number =>
  permit.kind === 'mix' && permit.scalpPercent !== null && isOnScalp(heat)
    ? Math.min(permit.maxDeveloperPercent, permit.scalpPercent)
    : permit.maxDeveloperPercent;

/** Does the order go beyond its permit? Every respect in which it binds: of a toner no line and no ratio. */
function findExcess(permit: MixPermit | TonerPermit, order: Order): MixtureRefusal | null {
  if (order.zone !== permit.zone) return { code: 'anotherZone' };
  if (permit.kind === 'mix' && !isSameLine(order.line, permit.tested.line)) return { code: 'anotherLine' };
  if (permit.kind === 'mix' && order.ratio !== permit.tested.ratio) return { code: 'anotherRatio' };
  if (isHotter(order.heat, permit.kind === 'mix' ? permit.maxHeat : 'none')) return { code: 'hotter' };
  const most = findStrongest(permit, order);
  if (order.developerPercent > most) return { code: 'stronger', most };
  return order.minutes <= permit.maxMinutes ? null : { code: 'longer', most: permit.maxMinutes };
}

/** A strand shows what may go on a head: so nothing stronger than this house puts on one. */
const findStrandExcess = (permit: TestPermit, order: Order): MixtureRefusal | null =>
  order.developerPercent > permit.maxDeveloperPercent
    ? { code: 'overHouseCeiling', most: permit.maxDeveloperPercent }
    : null;

/**
 * How far the scale's step may shift the ratio, as a share of it. Assumed because a twentieth more or less developer is
 * within what a spoon leaves in the bottle, and more is another mix than the one that was tested.
 */
export const ASSUMED_RATIO_TOLERANCE = 0.05;

/**
 * How many grams of each go into the bowl?
 * Takes a permit that was issued here, for a head or for a strand's few grams; anything else is refused, whatever its
 * type claims. Shades by parts on the scale's step, developer by the ratio on the same step; grams.
 * Checked in tests/shared/judgement/mixture.test.ts and tests/evidence/peroxide.test.ts.
 */
export function mixture(
  permit: TestPermit | MixPermit | TonerPermit,
  order: Order,
  stepG: number,
): Result<Mixture, MixtureRefusal> {
  if (!isIssued(permit)) return refuse({ code: 'forged' });
  const bottlePercent: PeroxidePercent = brand(order.developerPercent);
  if (!isWithinCeiling(bottlePercent)) return refuse({ code: 'overCeiling' });
  const excess = permit.kind === 'test' ? findStrandExcess(permit, order) : findExcess(permit, order);
  if (excess !== null) return refuse(excess);
  const bowl = computeBowlPercent(bottlePercent, order.ratio);
  if (!bowl.ok) return refuse({ code: bowl.error });
  const split = splitByParts(
    order.colourG,
    order.shades.map(({ parts }) => parts),
    stepG,
  );
  if (!split.ok) return refuse({ code: split.error });
  const colourMg = split.value.amountsG.reduce((sum, amountG) => sum + toMg(amountG), 0);
  const stepMg = toMg(stepG);
  const developerMg = Math.round((colourMg * order.ratio) / stepMg) * stepMg;
  const totalG = toG(colourMg + developerMg);
  if (totalG > ASSUMED_MAX_TOTAL_G) return refuse({ code: 'tooMuch' });
  const ratio = developerMg / colourMg;
  if (Math.abs(ratio / order.ratio - 1) > ASSUMED_RATIO_TOLERANCE) return refuse({ code: 'stepTooCoarse' });
  if (permit.kind === 'test' && totalG > permit.maxG) {
    return refuse({ code: 'tooMuchForAStrand', most: permit.maxG });
  }
  return accept({
    shades: order.shades.map(({ shade }, index) => ({ shade, amountG: split.value.amountsG[index] ?? 0 })),
    developerG: toG(developerMg),
    developerOffG: toG(Math.round(developerMg - colourMg * order.ratio)),
    totalG,
    remainderG: split.value.remainderG,
    bottlePercent,
    bowlPercent: bowl.value,
  });
}
