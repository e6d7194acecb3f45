import { ASSUMED_TOUCH_UP_CM } from '../chemistry/bleach';
import type { HairHistory } from '../heat/hairHistory';
import { computeProfile, type HairAt } from '../heat/profile';
import type { StrandAnswers } from '../records/forms/test';
import type { Zone } from '../records/zones';
import { placeZone, type Stretch } from './zonePlaces';

/** Why there: what the strand is to show. What is not known is said as "may be". */
export type SnipReason =
  | 'ironedWet'
  | 'mayBeIronedWet'
  | 'ironed'
  | 'bleached'
  | 'mayBeBleached'
  | 'mostBleach'
  | 'overlap'
  | 'oldest'
  | 'finest';

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
  /** Lightening or lift: two places around the head, where there are two zones. */
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

type Hairs = readonly [HairAt, ...HairAt[]];

/** The place where least is left by the careful end of the band; of several alike the one furthest from the scalp. */
const findWeakest = (hair: Hairs): HairAt =>
  hair.reduce((weakest, each) => (each.helixLeft.low <= weakest.helixLeft.low ? each : weakest), hair[0]);

function listReasons({ wetMin, ironMin, bleaches }: HairAt): readonly SnipReason[] {
  const heat: readonly SnipReason[] =
    wetMin.low > 0
      ? ['ironedWet']
      : wetMin.high > 0
        ? ['mayBeIronedWet']
        : ironMin.high > 0
          ? ['ironed']
          : [];
  const bleach: readonly SnipReason[] =
    bleaches.low > 0 ? ['bleached'] : bleaches.high > 0 ? ['mayBeBleached'] : [];
  return [...heat, ...bleach];
}

/** Where around the head: the old bleach, else where she irons most, else where hair is finest. */
const findPlace = ({ bleaches, ironMin }: HairAt): Snip['place'] =>
  bleaches.typical > 0 ? 'oldBleach' : ironMin.high > 0 ? 'whereIroned' : 'hairline';

/** The strands of one zone: its weakest place, and where it was bleached more often than there. */
function listInZone(zone: Zone, hair: Hairs): readonly Snip[] {
  const weakest = findWeakest(hair);
  const reasons = listReasons(weakest);
  const first: Snip = {
    zone,
    cm: weakest.cm,
    place: findPlace(weakest),
    why: zone === 'roots' ? [...reasons, 'overlap'] : reasons.length === 0 ? ['oldest'] : reasons,
  };
  const most = Math.max(...hair.map(({ bleaches }) => bleaches.typical));
  const [band, ...more] = hair.filter(({ bleaches }) => bleaches.typical === most);
  if (band === undefined || weakest.bleaches.typical === most) return [first];
  return [first, { zone, cm: findWeakest([band, ...more]).cm, place: 'oldBleach', why: ['mostBleach'] }];
}

/**
 * Where is a strand snipped, along its length and around the head, and why?
 * One for each zone the plan colours, at its weakest place by the helix that is left at the least, and another where it
 * was bleached more often than there; roots only to just beyond the new growth, where colour runs over onto older hair;
 * ends out without the ends. Lightening over two zones asks for two places around the head: the ends keep the worse one.
 * The nape is never offered: it is ironed least, and where it is worst only the hand knows.
 * common practice, no source. An estimate: the strand decides. Checked by tests/shared/hair/whereToSnip.test.ts.
 */
export function listSnips(history: HairHistory, { zones, isLifting, regrowthCm }: SnipPlan): readonly Snip[] {
  const lengthCm = history.lengthCm.typical;
  const snips = zones.flatMap((zone) => {
    const stretch = placeZone(zone, lengthCm, regrowthCm ?? ASSUMED_TOUCH_UP_CM);
    const toCm = zone === 'roots' ? Math.min(stretch.toCm + EVERY_CM, lengthCm) : stretch.toCm;
    const [first, ...more] = computeProfile(history, listPlaces({ ...stretch, toCm }));
    if (first === undefined) throw new RangeError(`a zone without a place: ${zone}`);
    return listInZone(zone, [first, ...more]);
  });
  const isOnePlace = snips.length > 1 && snips.every(({ place }) => place === snips[0]?.place);
  if (!isLifting || !isOnePlace) return snips;
  return snips.map((snip, index) => (index === 0 ? findSecondPlace(snip) : snip));
}

/** Another place around the head, so that two are tested: the hairline, or the crown where the hairline is taken. */
const findSecondPlace = (snip: Snip): Snip =>
  snip.place === 'hairline' ? { ...snip, place: 'crown' } : { ...snip, place: 'hairline', why: ['finest'] };

/** Places for one more strand where the map names none that is left; never the nape: as listSnips. */
const otherPlaces = ['hairline', 'crown', 'fringe'] as const satisfies readonly Snip['place'][];

/** Where along a zone a strand was snipped already. */
export type Snipped = Pick<Snip, 'zone' | 'place'>;

/**
 * From which place is one more strand taken, when one is too few? The worst first: the place the map would snip in the
 * oldest zone, then around the head where hair is finest, and none that was tested already; null where all were.
 * common practice, no source. Checked by tests/shared/hair/whereToSnip.test.ts.
 */
export function findAnotherPlace(snips: readonly Snip[], tested: readonly Snipped[]): Snip['place'] | null {
  const taken = tested.map(({ place }) => place);
  const byMap = snips.map(({ place }) => place).reverse();
  return [...byMap, ...otherPlaces].find((place) => !taken.includes(place)) ?? null;
}
