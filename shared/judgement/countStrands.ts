import { isAtLeastAsBad } from '../records/gradeOutcome';
import type { OutcomeRecord, StrandRecord } from '../records/record';
import type { ByZone, Zone } from '../records/zones';
import { zones } from '../records/zones';
import type { ZoneFinding } from './decisionTable';
import { isHotter, isSameLine, type Mix, nameProven } from './mixes';

type Place = StrandRecord['place'];

/** A strand whose outcome counts today. */
export type Counting = StrandRecord & { readonly outcome: OutcomeRecord };

/** Did this strand stand all that this mix is? Compared as the permit compares a bowl with it. */
const stoodAllOf = (strand: Counting, mix: Mix): boolean => {
  const stood = nameProven(strand);
  return (
    isSameLine(stood.line, mix.line) &&
    stood.ratio === mix.ratio &&
    stood.developerPercent >= mix.developerPercent &&
    stood.minutes >= mix.minutes &&
    !isHotter(mix.heat, stood.heat)
  );
};

/** The mix that would go on by this strand, for no longer than it was meant to be on. */
const nameMeant = (strand: Counting): Mix => {
  const proven = nameProven(strand);
  return { ...proven, minutes: Math.min(proven.minutes, strand.minutes) };
};

const hasFailed = (finding: ZoneFinding): boolean => finding === 'gummy' || finding === 'broken';
const hasHeld = ({ outcome }: Counting): boolean => !isAtLeastAsBad(outcome.grade, 'gummy');

/** The worst place is one of two: strands that leave it out say no more than one. */
const countPlaces = (places: readonly Place[], listWorst: () => readonly Place[]): number => {
  const count = new Set(places).size;
  if (count < 2) return count;
  const worst = listWorst();
  return places.some((place) => worst.includes(place)) ? count : 1;
};

/** From which places strands speak for the mix of a zone, and for how many they count. */
export interface Spoken {
  readonly zone: Zone;
  readonly places: readonly Place[];
  readonly count: number;
}

/** What is counted, and by which rule. */
export interface ToCount {
  readonly counting: readonly Counting[];
  /** The newest of each zone. */
  readonly newest: readonly Counting[];
  readonly found: ByZone<ZoneFinding>;
  readonly modelVersion: number;
  /** The places that the map calls the worst: reckoned only where it matters. */
  readonly listWorst: () => readonly Place[];
}

/**
 * Who speaks for each mix that would go on? Strands that stood it, all its time, each from a place of its own and one of them
 * from the worst: a weaker or shorter one, or a second from the same place, says nothing more. Before model 5 any place would do.
 */
export function listSpoken({ counting, newest, found, modelVersion, listWorst }: ToCount): readonly Spoken[] {
  const held = counting.filter(hasHeld);
  return newest
    .filter(({ zone }) => !hasFailed(found[zone]))
    .map((one) => {
      const places = held.filter((strand) => stoodAllOf(strand, nameMeant(one))).map(({ place }) => place);
      const count = modelVersion < 5 ? new Set(places).size : countPlaces(places, listWorst);
      return { zone: one.zone, places, count };
    });
}

/** Of which mix do fewest strands speak? Of several alike that of the oldest hair. */
export const findLeastSpoken = (spoken: readonly Spoken[]): Spoken | undefined =>
  spoken.reduce<Spoken | undefined>(
    (least, each) => (least === undefined || each.count <= least.count ? each : least),
    undefined,
  );

/**
 * How many strands speak for what would go on? The mix that fewest speak for counts. A zone that failed has spoken, for
 * however long it was on. Checked in tests/shared/judgement/countStrands.test.ts.
 */
export const countStrands = (toCount: ToCount): number =>
  zones.filter((zone) => hasFailed(toCount.found[zone])).length +
  (findLeastSpoken(listSpoken(toCount))?.count ?? 0);
