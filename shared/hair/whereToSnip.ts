import { ASSUMED_TOUCH_UP_CM } from '../chemistry/bleach';
import { computeProfile, type HairAt, type HairHistory } from '../heat/profile';
import type { StrandAnswers } from '../records/forms/test';
import type { Zone } from '../records/zones';
import { placeZone, type Stretch } from './zonePlaces';

/** Why there: what the strand is to show. */
export type SnipReason = 'ironedWet' | 'ironed' | 'bleached' | 'band' | 'overlap' | 'oldest' | 'finest';

/** One strand to be snipped: for which zone, where around the head, and where along it the colour is hardest on it. */
export interface Snip {
  readonly zone: Zone;
  readonly place: StrandAnswers['place'];
  readonly cm: number;
  readonly why: readonly SnipReason[];
}

/** What bears on where to snip, besides what the hair has gone through. */
export interface SnipPlan {
  /** Zones the plan colours, in order. */
  readonly zones: readonly Zone[];
  /** Lightening or lift: two places around the head. */
  readonly isLifting: boolean;
  readonly regrowthCm?: number | undefined;
}

/** Along the strand it is looked at every so many centimetres. Exact enough for a finger. */
const EVERY_CM = 0.5;

const listPlaces = ({ fromCm, toCm }: Stretch): readonly number[] => [
  ...Array.from(
    { length: Math.floor((toCm - fromCm) / EVERY_CM) + 1 },
    (_, step) => fromCm + step * EVERY_CM,
  ),
  toCm,
];

/** The place where least is left by the careful end of the band; of several alike the one furthest from the scalp. */
const findWeakest = (hair: readonly [HairAt, ...HairAt[]]): HairAt =>
  hair.reduce((weakest, each) => (each.helixLeft.low <= weakest.helixLeft.low ? each : weakest), hair[0]);

function listReasons(weakest: HairAt, inZone: readonly HairAt[], zone: Zone): readonly SnipReason[] {
  const { wetMin, ironMin, bleaches } = weakest;
  const isBand = inZone.some((hair) => hair.bleaches.typical < bleaches.typical);
  const heat: readonly SnipReason[] = wetMin.high > 0 ? ['ironedWet'] : ironMin.high > 0 ? ['ironed'] : [];
  const bleach: readonly SnipReason[] = bleaches.high === 0 ? [] : [isBand ? 'band' : 'bleached'];
  const why = [...heat, ...bleach, ...(zone === 'roots' ? (['overlap'] as const) : [])];
  return why.length === 0 ? ['oldest'] : why;
}

/** Where around the head: the old bleach, else where she irons most, else where hair is finest. */
const findPlace = ({ bleaches, ironMin }: HairAt): Snip['place'] =>
  bleaches.typical > 0 ? 'oldBleach' : ironMin.high > 0 ? 'whereIroned' : 'hairline';

/**
 * Where is a strand snipped, along its length and around the head, and why?
 * One for each zone the plan colours, at its weakest place by the helix that is left at the least: the roots only to
 * just beyond the new growth, where colour runs over onto older hair; ends out without the ends; a band of old bleach
 * where it is. Lightening asks for two places around the head. The nape is never offered: it is ironed least.
 * common practice, no source. An estimate: the strand decides. Checked by tests/shared/hair/whereToSnip.test.ts.
 */
export function listSnips(history: HairHistory, { zones, isLifting, regrowthCm }: SnipPlan): readonly Snip[] {
  const lengthCm = history.lengthCm.typical;
  const snips = zones.map((zone) => {
    const stretch = placeZone(zone, lengthCm, regrowthCm ?? ASSUMED_TOUCH_UP_CM);
    const toCm = zone === 'roots' ? Math.min(stretch.toCm + EVERY_CM, lengthCm) : stretch.toCm;
    const [first, ...more] = computeProfile(history, listPlaces({ ...stretch, toCm }));
    if (first === undefined) throw new RangeError(`a zone without a place: ${zone}`);
    const weakest = findWeakest([first, ...more]);
    return {
      zone,
      cm: weakest.cm,
      place: findPlace(weakest),
      why: listReasons(weakest, [first, ...more], zone),
    };
  });
  return snips.map((snip, index) => {
    const isSecondPlaceDue = isLifting && index > 0 && snips[index - 1]?.place === snip.place;
    if (!isSecondPlaceDue || snip.place === 'hairline') return snip;
    return { ...snip, place: 'hairline', why: [...snip.why, 'finest'] };
  });
}
