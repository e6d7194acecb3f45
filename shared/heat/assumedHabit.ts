import { makeRange, type Range } from '../units/range';

/**
 * How many days a week, when she doesn't know?
 * Assumed because a habit worth naming happens at least weekly and no week has more than seven days; three is what
 * the trade reckons with.
 */
export const ASSUMED_DAYS_A_WEEK: Range = makeRange(1, 3, 7);

/**
 * For how many weeks, when she doesn't know?
 * Assumed because a habit she cannot date is older than a season, and five years of growth (published: about
 * 1.1 cm/month, Loussouarn et al., Int. J. Dermatol. 44(Suppl 1):6–9, 2005) are longer than most hair is kept; two
 * years is what the trade reckons with.
 */
export const ASSUMED_WEEKS: Range = makeRange(13, 104, 260);

/**
 * How many seconds a section, when she doesn't know?
 * Assumed because one pass of ten seconds is the least there is, and twice the trade's minute a patient most.
 */
export const ASSUMED_SECONDS_A_SECTION: Range = makeRange(10, 60, 120);

/**
 * Which share of her minutes falls to each of wet, damp and dry, most likely, when she doesn't know how wet?
 * Assumed because nothing prefers one of the three, and shares that make one whole keep the typical total.
 */
export const ASSUMED_UNKNOWN_WETNESS_SHARE = 1 / 3;

/**
 * Which setting is meant by "don't know", where a threshold is asked? °C.
 * Assumed because it is the hottest that can be told (shared/records/forms/hotTools.ts): not knowing must never look
 * cooler than an answer.
 */
export const ASSUMED_UNKNOWN_SETTING_C = 250;

/**
 * Which settings are meant by "don't know", where a dose is reckoned? °C: 300 and 400 °F, and the hottest that can be told.
 * Assumed because household irons run from about there on, and 400 °F is where tools for wet hair and dry meet.
 */
export const ASSUMED_SETTING_C: Range = makeRange(
  ((300 - 32) * 5) / 9,
  ((400 - 32) * 5) / 9,
  ASSUMED_UNKNOWN_SETTING_C,
);

/**
 * How many weeks ago did she stop, when she doesn't know?
 * Assumed because a habit that is told is no older than most hair, and one that may still go on is the careful end.
 */
export const ASSUMED_STOPPED_WEEKS: Range = makeRange(0, 13, 104);
