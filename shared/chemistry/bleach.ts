import { type Account, pick, pickOther } from '../units/account';
import type { Range } from '../units/range';

/**
 * Which share of the helix does one bleach leave? exp(−0.069), about 93 %.
 * published: Wortmann, Springob, Sendelbach, J. Cosmet. Sci. 53:219–228, 2002, Fig. 4: ln(Hx %) = 4.55 − 0.069 n. The
 * formula itself starts at 94.6 % for n = 0, so it is used relative to n = 0.
 * Checked by tests/evidence/bleach.test.ts.
 */
export const BLEACH_LOG_LOSS = 0.069;
export const BLEACH_LOG_START = 4.55;

/** Helix left after so many bleaches, per cent of what calorimetry finds; as published, not relative to none. */
export const computePublishedHelixPercent = (bleaches: number): number =>
  Math.exp(BLEACH_LOG_START - BLEACH_LOG_LOSS * bleaches);

/** How surely did it happen? Told; most likely; or not ruled out, because nobody knows. */
export type Sureness = 'told' | 'likely' | 'possible';

/** One time bleach was on her hair. */
export interface Bleach {
  /** How many weeks ago. */
  readonly weeksAgo: Range;
  /** Where it went: everywhere there was hair then, on the new growth only, on the ends only. */
  readonly reach: 'all' | 'roots' | 'ends' | 'unknown';
  readonly sureness: Sureness;
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

/** Which hair one bleach met, in one account: between these centimetres from the scalp as it lies today. */
export interface BleachReach {
  readonly fromCm: number;
  readonly toCm: number;
  readonly weeksAgo: number;
}

const countsIn: Readonly<Record<Sureness, readonly Account[]>> = {
  told: ['least', 'typical', 'most'],
  likely: ['typical', 'most'],
  possible: ['most'],
};

/**
 * Which hair did this bleach meet, in this account? Hair that had grown by then and lay within its reach; null for none.
 * Exact for what was told. A time or a growth that is not known moves the borders: inwards in the least account, outwards
 * in the most. Growth in cm a week; ends from `endsFromCm` on. Checked by tests/shared/chemistry/bleach.test.ts.
 */
export function findBleachReach(
  { weeksAgo, reach, sureness }: Bleach,
  growth: Range,
  endsFromCm: number,
  account: Account,
): BleachReach | null {
  if (!countsIn[sureness].includes(account) || (reach === 'unknown' && account === 'least')) return null;
  const grownOutCm = pickOther(weeksAgo, account) * pickOther(growth, account);
  const roots = pick(weeksAgo, account) * pick(growth, account) + ASSUMED_TOUCH_UP_CM;
  const fromCm = reach === 'ends' ? Math.max(grownOutCm, endsFromCm) : grownOutCm;
  const toCm = reach === 'roots' ? roots : Number.POSITIVE_INFINITY;
  return fromCm > toCm ? null : { fromCm, toCm, weeksAgo: pick(weeksAgo, account) };
}
