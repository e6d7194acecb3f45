import { LEGAL_CEILING_PERCENT } from '../chemistry/peroxide';
import { thinOnScale } from '../chemistry/thinning';
import type { ToWeigh } from '../chemistry/weighIn';
import type { BowlAnswers } from '../records/forms/bowl';
import type { Settings } from '../records/settings';
import { ASSUMED_RATIO_TOLERANCE, type Mixture } from './mixture';

type Weighed = Pick<BowlAnswers, 'shades' | 'colourG' | 'ratio' | 'developerPercent' | 'bottles' | 'weighed'>;

/** Grams of each of two bottles; null where one bottle is the developer. */
export type Bottles = { readonly strongG: number; readonly weakG: number } | null;

/** What goes in, in its order: the shades, then the developer, or the stronger and the weaker bottle of it. */
export const listToWeigh = ({ shades, developerG }: Mixture, bottles: Bottles): readonly ToWeigh[] => [
  ...shades.map(({ amountG }): ToWeigh => ({ wantedG: amountG, mayBe: 'either' })),
  ...(bottles === null
    ? [{ wantedG: developerG, mayBe: 'either' } as const]
    : [
        { wantedG: bottles.strongG, mayBe: 'less' } as const,
        { wantedG: bottles.weakG, mayBe: 'more' } as const,
      ]),
];

const sum = (all: readonly number[]): number => all.reduce((total, each) => total + each, 0);

/** How strong is the developer as it was weighed, per cent? Exact mass balance; what no scale said is taken as ordered. */
export function computeMadePercent({
  shades,
  developerPercent,
  bottles = [],
  weighed = [],
}: Weighed): number {
  const [strong, weak] = bottles;
  if (strong === undefined || weak === undefined || weighed.length === 0) return developerPercent;
  const [strongG = 0, weakG = 0] = weighed.slice(shades.length).map(({ amountG }) => amountG);
  return (strong.percent * strongG + weak.percent * weakG) / (strongG + weakG);
}

/** Rounding of one division, as a share: no scale shows it. */
const EQUAL = 1e-6;

/** Is what was weighed stronger than what it is said to be, or a bottle of it stronger than goes on any hair? */
export const isMadeStronger = (bowl: Weighed): boolean =>
  (bowl.bottles ?? []).some(({ percent }) => percent > LEGAL_CEILING_PERCENT) ||
  !(computeMadePercent(bowl) <= bowl.developerPercent * (1 + EQUAL));

/** Why a bowl is not what the scale said. */
export type WeighedRefusal = 'bottlesDoNotMakeIt' | 'notTheParts' | 'madeStronger';

const isNear = (grams: number, wantedG: number, stepG: number): boolean =>
  Math.abs(grams - wantedG) <= wantedG * ASSUMED_RATIO_TOLERANCE + stepG;

/** Do two bottles make this strength, neither of them stronger than this house keeps? */
function mayMake({ bottles = [], developerPercent, colourG, ratio }: Weighed, settings: Settings): boolean {
  const [strong, weak] = bottles;
  if (strong === undefined) return true;
  if (weak === undefined || strong.percent > settings.profile.ceilingPercent) return false;
  const made = thinOnScale(
    {
      strongPercent: strong.percent,
      weakPercent: weak.percent,
      wantedPercent: developerPercent,
      totalG: colourG * ratio,
    },
    settings.scaleStepG,
  );
  return made.ok && made.value.strongG > 0 && made.value.weakG > 0;
}

/**
 * Is what the scale said of each the bowl that was ordered?
 * The ratio within ASSUMED_RATIO_TOLERANCE and a step of the scale, the parts of the colour within two, since they were
 * rounded to a step before anybody weighed; the colour is the sum of its
 * shades; two bottles never come out stronger than the strength they stand for. A bowl of which no scale said anything,
 * from one bottle, is what was ordered. Checked in tests/shared/judgement/weighedBowl.test.ts.
 */
export function findWeighedRefusal(bowl: Weighed, settings: Settings): WeighedRefusal | null {
  if (!mayMake(bowl, settings)) return 'bottlesDoNotMakeIt';
  const { shades, colourG, ratio, bottles = [], weighed = [] } = bowl;
  if (weighed.length === 0) return null;
  if (weighed.length !== shades.length + (bottles.length === 0 ? 1 : 2)) return 'notTheParts';
  const grams = weighed.map(({ amountG }) => amountG);
  const colour = grams.slice(0, shades.length);
  const parts = sum(shades.map((shade) => shade.parts));
  const stepG = settings.scaleStepG;
  const isAsOrdered =
    isNear(sum(colour), colourG, stepG) &&
    isNear(sum(grams.slice(shades.length)), sum(colour) * ratio, stepG) &&
    shades.every((shade, index) => isNear(grams[index] ?? 0, (sum(colour) * shade.parts) / parts, 2 * stepG));
  if (!isAsOrdered) return 'notTheParts';
  return isMadeStronger(bowl) ? 'madeStronger' : null;
}
