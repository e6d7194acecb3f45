import { type Account, pick, pickOther } from '../units/account';
import type { Range } from '../units/range';

/**
 * What does one bleach take of the helix, as −ln of what it leaves? 0.069: it leaves about 93 %.
 * published: Wortmann, Springob, Sendelbach, J. Cosmet. Sci. 53:219–228, 2002, Fig. 4: ln(Hx %) = 4.55 − 0.069 n. The
 * formula itself starts at 94.6 % for n = 0, so it is used relative to n = 0.
 * Checked by tests/evidence/bleach.test.ts.
 */
export const BLEACH_LOG_LOSS = 0.069;

/** How surely did it happen? Told; most likely; or not ruled out, because nobody knows. */
export type Sureness = 'told' | 'likely' | 'possible';

/**
 * Where bleach went: everywhere there was hair then; on the ends only; on each new growth up to the last time, so that
 * all older hair had it once, when it was new; on the new growth of one time only, a band today; somewhere on hair of
 * which only the oldest ends are told; or not known.
 */
export type BleachPlace = 'all' | 'ends' | 'newGrowth' | 'band' | 'oldest' | 'unknown';

/** One time bleach was on her hair. */
export interface Bleach {
  /** How many weeks ago. */
  readonly weeksAgo: Range;
  readonly place: BleachPlace;
  readonly sureness: Sureness;
}

/** The strand it may lie on, cm from the scalp: where its ends begin, and its tip. */
export interface Strand {
  readonly endsFromCm: number;
  readonly tipCm: number;
}

/**
 * How far from the scalp does a root touch-up reach, cm?
 * Assumed because six to twelve weeks of growth and an overlap are about so long.
 */
export const ASSUMED_TOUCH_UP_CM = 4;

/**
 * How long are the ends, cm from the tip?
 * Assumed because lighter ends are drawn over about the last third of middle lengths; never more than that third.
 */
export const ASSUMED_ENDS_CM = 10;

/** Where the ends begin, cm from the scalp, on hair of this length. */
export const findEndsFrom = (lengthCm: number): number => lengthCm - Math.min(ASSUMED_ENDS_CM, lengthCm / 3);

/** Which hair one bleach met, in one account: from here to there, cm from the scalp as it lies today. */
export interface BleachReach {
  readonly fromCm: number;
  readonly toCm: number;
  /** For how many weeks that hair has been bleached; for hair bleached when it was new, all its life. */
  readonly weeksAgo: number;
}

const countsIn: Readonly<Record<Sureness, readonly Account[]>> = {
  told: ['least', 'typical', 'most'],
  likely: ['typical', 'most'],
  possible: ['most'],
};

/** From where outwards its place begins, in this account; what is not known is nowhere at the least, everywhere at the most. */
function findPlaceFrom(place: BleachPlace, { endsFromCm, tipCm }: Strand, account: Account): number {
  switch (place) {
    case 'all':
    case 'newGrowth':
    case 'band':
      return 0;
    case 'ends':
      return endsFromCm;
    case 'oldest':
      return { least: tipCm, typical: endsFromCm, most: 0 }[account];
    case 'unknown':
      return { least: tipCm, typical: 0, most: 0 }[account];
  }
}

/**
 * Which hair did this bleach meet, in this account? Hair that had grown by then and lay where it went; null for none.
 * Exact for what was told. A time, a growth or a place that is not known moves the border: outwards in the least account,
 * inwards in the most; a band may be nowhere for certain. What was told is told of the oldest ends, but for a band, so
 * it never lies beyond the tip.
 * Growth in cm a week. Checked by tests/shared/chemistry/bleach.test.ts.
 */
export function findBleachReach(
  { weeksAgo, place, sureness }: Bleach,
  growth: Range,
  strand: Strand,
  account: Account,
): BleachReach | null {
  if (!countsIn[sureness].includes(account)) return null;
  const grownOutCm = pickOther(weeksAgo, account) * pickOther(growth, account);
  const fromCm = Math.max(grownOutCm, findPlaceFrom(place, strand, account));
  if (place === 'band') {
    const toCm = pick(weeksAgo, account) * pick(growth, account) + ASSUMED_TOUCH_UP_CM;
    return fromCm > toCm ? null : { fromCm, toCm, weeksAgo: pick(weeksAgo, account) };
  }
  const isAllItsLife = place === 'newGrowth' && account !== 'least';
  return {
    fromCm: sureness === 'told' ? Math.min(fromCm, strand.tipCm) : fromCm,
    toCm: Number.POSITIVE_INFINITY,
    weeksAgo: isAllItsLife ? Number.POSITIVE_INFINITY : pick(weeksAgo, account),
  };
}
