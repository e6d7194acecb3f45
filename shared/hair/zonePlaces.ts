import { ASSUMED_TOUCH_UP_CM, findEndsFrom } from '../chemistry/bleach';
import type { Zone } from '../records/zones';

/** From where to where along the strand, cm from the scalp. */
export interface Stretch {
  readonly fromCm: number;
  readonly toCm: number;
}

/**
 * Where does each zone lie on hair of this length?
 * Roots: what has grown since the last colour where that was measured, else ASSUMED_TOUCH_UP_CM. Ends: from findEndsFrom
 * on. Lengths: all before them, the roots included, since a full head is coloured from the scalp.
 * Checked by tests/shared/hair/whereToSnip.test.ts.
 */
export function placeZone(zone: Zone, lengthCm: number, regrowthCm: number = ASSUMED_TOUCH_UP_CM): Stretch {
  const endsFromCm = findEndsFrom(lengthCm);
  switch (zone) {
    case 'roots':
      return { fromCm: 0, toCm: Math.min(regrowthCm, lengthCm) };
    case 'lengths':
      return { fromCm: 0, toCm: endsFromCm };
    case 'ends':
      return { fromCm: endsFromCm, toCm: lengthCm };
  }
}
