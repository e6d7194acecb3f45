import { digest } from '../../shared/records/documents/canonical';
import type { MixAnswers } from '../../shared/records/forms/test';
import type { Zone } from '../../shared/records/zones';
import type { Lesson } from './lesson';
import { knowHair } from './trueHair';

/** One sitting: what is drawn is drawn from its seed beside the lesson's own. */
export interface Sitting {
  readonly lesson: Lesson;
  readonly seed: number;
}

/** What is on the hair, as far as it wears it. */
export type Wearing = Pick<MixAnswers, 'developerPercent' | 'heat'> & { readonly isLifting: boolean };

/**
 * The mix and the minutes for which the chance that strands break is meant. Assumed because 20 vol for half an hour is what
 * a strand is mostly tested in, and the chance was weighed for no mix in particular.
 */
export const ASSUMED_USUAL_WEAR = { percent: 6, minutes: 30 } as const;

/** By how much more is hair worn under heat? Assumed because warmth quickens it, and no direction says by how much. */
export const ASSUMED_HEAT_WEARS = { none: 1, foil: 1.25, dryHeat: 1.6 } as const;

/** Of what lightener wears, colour that only deposits wears this share. Assumed because it opens the hair far less. */
export const ASSUMED_DEPOSIT_WEARS = 0.3;

/** A strand from the nape wears this share. Assumed because it is ironed least, and so tells too little of the rest. */
export const ASSUMED_NAPE_WEARS = 0.5;

/**
 * No luckier and no unluckier than this is anybody who is drawn. Assumed because a lesson is not to hang on one in ten:
 * hair with nothing against it then stands the usual mix whatever is drawn, and hair that is nearly sure to go does.
 */
export const ASSUMED_DRAWN = { least: 0.1, most: 0.9 } as const;

/** So many of its 64 hex digits make a draw: as many as a float holds exactly. */
const DIGITS = 13;

/**
 * One draw between none and one for the whole head: the same for the same lesson and sitting. So of two zones the weaker one
 * never outlasts the other.
 */
function draw({ lesson, seed }: Sitting): number {
  const drawn = Number.parseInt(digest([lesson.id, lesson.strand.seed, seed]).slice(0, DIGITS), 16);
  const { least, most } = ASSUMED_DRAWN;
  return least + (most - least) * (drawn / 16 ** DIGITS);
}

/**
 * Wear adds up: hardly any hair breaks in the first minutes, and then it goes fast. The shape of a Weibull law; 1 would be as
 * likely in the first minute as in the last. Assumed because a look after three minutes is to be able to come in time.
 */
export const ASSUMED_WEAR_SHAPE = 3;

/** So many times the usual wear no hair stands. Assumed because two hours of it are beyond any maker's directions. */
export const ASSUMED_MOST_STRENGTH = 4;

/** From this chance on her history speaks against it. Assumed because it is more than twice that of hair with nothing against it. */
export const ASSUMED_WORN_FROM = 0.1;

/**
 * Between which strengths does hair hold that holds by luck? Assumed because worn hair is then to come off the usual mix
 * rough, and other hair sound (ASSUMED_WEAKENS_FROM).
 */
export const ASSUMED_LUCK = {
  worn: { least: 1.3, most: 1.8 },
  fresh: { least: 2.2, most: ASSUMED_MOST_STRENGTH },
} as const;

/**
 * How much of the usual wear does this zone's hair stand before it breaks? 1: the usual mix for the usual time.
 * One draw against the chance: P(broken by wear w) = 1 − (1 − chance)^(w^shape). So more minutes, more heat and a stronger
 * developer never make it later, and weaker hair never goes later on the same draw.
 */
export function findStrength(sitting: Sitting, zone: Zone): number {
  const { chance, isLucky } = knowHair(sitting.lesson).zones[zone];
  const share = Math.log1p(-draw(sitting)) / Math.log1p(-chance);
  const strength = Math.min(ASSUMED_MOST_STRENGTH, share ** (1 / ASSUMED_WEAR_SHAPE));
  if (!isLucky) return strength;
  const { least, most } = ASSUMED_LUCK[chance < ASSUMED_WORN_FROM ? 'fresh' : 'worn'];
  return Math.max(least, Math.min(most, strength));
}

/** How much of the usual wear are so many minutes of this mix? */
export const computeWear = ({ developerPercent, heat, isLifting }: Wearing, minutes: number): number =>
  (Math.max(0, minutes) / ASSUMED_USUAL_WEAR.minutes) *
  (developerPercent / ASSUMED_USUAL_WEAR.percent) *
  ASSUMED_HEAT_WEARS[heat] *
  (isLifting ? 1 : ASSUMED_DEPOSIT_WEARS);
