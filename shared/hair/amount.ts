import type { Answers } from '../records/forms/asked';
import { bowlForm } from '../records/forms/bowl';
import type { Zone } from '../records/zones';
import { exactly, makeRange, type Range } from '../units/range';
import { readHistory } from './readHistory';
import { placeZone } from './zonePlaces';

/**
 * Mixed colour at the scalp, and along each centimetre from there, g, on hair of medium density. Assumed because a touch-up
 * takes some forty grams mixed and hair to the bra line some hundred and sixty, as colourists weigh them: common practice,
 * no source.
 */
export const ASSUMED_MIXED_G = { atScalp: 30, aCm: 3 } as const;

/** So much of it on thin and thick hair. Assumed because thick hair has about twice as many hairs as thin. */
export const ASSUMED_DENSITY_SHARE = { thin: 0.7, medium: 1, thick: 1.4 } as const;

/** Low and high of the typical. Assumed because hands differ by a quarter, and more is always mixed than is left out. */
export const ASSUMED_HAND_SHARE: Range = makeRange(0.75, 1, 1.25);

/** A density nobody knows is any of them. */
const densityOf = (told: keyof typeof ASSUMED_DENSITY_SHARE | 'unknown' | undefined): Range => {
  const { thin, medium, thick } = ASSUMED_DENSITY_SHARE;
  return told === undefined || told === 'unknown'
    ? makeRange(thin, medium, thick)
    : exactly(ASSUMED_DENSITY_SHARE[told]);
};

/**
 * About how much is mixed for this zone, colour and developer together, g? From how far the zone reaches and how dense the
 * hair is; an estimate that fills in a field and binds nothing. Rises with length and density.
 * Checked in tests/shared/hair/amount.test.ts.
 */
export function estimateMixedG(answers: Answers, zone: Zone): Range {
  const { lengthCm } = readHistory(answers);
  const density = densityOf(answers.client?.density);
  const of = (end: keyof Range): number => {
    const { fromCm, toCm } = placeZone(zone, lengthCm[end], answers.hotTools?.regrowthCm);
    const atScalpG = fromCm === 0 ? ASSUMED_MIXED_G.atScalp : 0;
    return (atScalpG + ASSUMED_MIXED_G.aCm * (toCm - fromCm)) * density[end] * ASSUMED_HAND_SHARE[end];
  };
  return makeRange(of('low'), of('typical'), of('high'));
}

/** A bowl is filled to a round figure, g. Assumed because nobody weighs an estimate to the gram. */
export const ASSUMED_ROUND_G = 5;

/** The colour of it before anything is typed, g: on a round figure, within what the field takes. */
export function suggestColourG(answers: Answers, zone: Zone, developerToOne: number): number {
  const colourG = estimateMixedG(answers, zone).typical / (1 + developerToOne);
  const { min, max } = bowlForm.colourG.field;
  return Math.min(max, Math.max(min, Math.round(colourG / ASSUMED_ROUND_G) * ASSUMED_ROUND_G));
}
