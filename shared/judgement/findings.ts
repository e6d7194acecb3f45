import { type Grade, hasBadSigns, isAtLeastAsBad } from '../records/gradeOutcome';
import { formPlanKey } from '../records/planKey';
import { type ConsultationRecord, findStrand, type StrandRecord } from '../records/record';
import type { Settings } from '../records/settings';
import type { ByZone, Zone } from '../records/zones';
import { zones } from '../records/zones';
import {
  type Counting,
  countStrands,
  findLeastSpoken,
  listSpoken,
  type Spoken,
  type ToCount,
} from './countStrands';
import type { Decision } from './decisions';
import { type Findings, suggestDecision, type ZoneFinding } from './decisionTable';
import { isLapsed } from './lapse';
import { isNoGentler, nameTested } from './mixes';
import { listPlannedZones } from './plannedZones';
import { listWorstPlaces } from './planSnips';
import { judgeRisk } from './risk';
import { isAbsoluteRule } from './rules';
import { isLifting, listOpenStops } from './stops';

/** Does this strand stand for the plan as it is now? Its age is judged apart, from the time of asking. */
export const isForThisPlan = (strand: StrandRecord, record: ConsultationRecord): boolean =>
  !strand.isVoid && strand.planKey === formPlanKey(record.answers);

/** Was a bowl weighed on the strength of this strand under another decision than today's? Then it is used up. */
const isSpent = (strand: StrandRecord, { bowls, decision }: ConsultationRecord): boolean =>
  bowls.some(
    (bowl) =>
      bowl.strand === strand.number && bowl.state !== 'thrown' && bowl.proof?.decisionSeq !== decision?.seq,
  );

/** Did a bowl of this strand reach the head? Then a second round needs a new strand, whatever was decided. */
const hasReachedHead = (strand: StrandRecord, { bowls }: ConsultationRecord): boolean =>
  bowls.some((bowl) => bowl.strand === strand.number && (bowl.state === 'on' || bowl.state === 'rinsed'));

/** Zones whose newest strand stands, with its outcome, for the plan as it is now. */
export const listStanding = (record: ConsultationRecord, nowMs: number): readonly Zone[] =>
  zones.filter((zone) => {
    const strand = findStrand(record, zone);
    return strand !== undefined && counts(strand, record, nowMs) && !hasReachedHead(strand, record);
  });

const counts = (strand: StrandRecord, record: ConsultationRecord, nowMs: number): strand is Counting =>
  strand.outcome !== null &&
  isForThisPlan(strand, record) &&
  !isLapsed(strand, nowMs) &&
  !isSpent(strand, record);

/**
 * What does a strand say against the hair, though a named correction took away what it allowed? Weak hair stays weak.
 * One that looked weak and has no outcome counts as rough. Null where it says nothing against this plan.
 */
function findAgainst(strand: StrandRecord, record: ConsultationRecord, nowMs: number): Grade | null {
  const isOfThisPlan = strand.planKey === formPlanKey(record.answers);
  if (!strand.isVoid || !isOfThisPlan || strand.ended?.how === 'discarded') return null;
  if (strand.outcome !== null) return isLapsed(strand, nowMs) ? null : strand.outcome.grade;
  return hasBadSigns(strand) ? 'rough' : null;
}

/**
 * What is known of one zone: the worst of its strands, but for those of a mix so much stronger that the newest one is
 * gentler. A second strand from a better place takes nothing back.
 */
function findZone(record: ConsultationRecord, zone: Zone, nowMs: number): ZoneFinding {
  if (!listPlannedZones(record.answers.client?.reach).includes(zone)) return 'notPlanned';
  const newest = findStrand(record, zone);
  if (newest === undefined || !counts(newest, record, nowMs)) return 'untested';
  return record.strands
    .filter((strand) => strand.zone === zone)
    .filter((strand) => strand === newest || isNoGentler(nameTested(newest), nameTested(strand)))
    .map((strand) =>
      counts(strand, record, nowMs) ? strand.outcome.grade : findAgainst(strand, record, nowMs),
    )
    .filter((grade) => grade !== null)
    .reduce((worst, grade) => (isAtLeastAsBad(grade, worst) ? grade : worst), newest.outcome.grade);
}

/** The newest strand of each zone that counts today: level and evenness are those of the mix that would go on. */
const listNewest = (record: ConsultationRecord, nowMs: number): readonly Counting[] =>
  zones
    .map((zone) => findStrand(record, zone))
    .filter((strand) => strand !== undefined)
    .filter((strand) => counts(strand, record, nowMs));

const gatherToCount = (record: ConsultationRecord, nowMs: number): ToCount => ({
  counting: record.strands.filter((strand) => counts(strand, record, nowMs)),
  newest: listNewest(record, nowMs),
  found: Object.fromEntries(
    zones.map((zone) => [zone, findZone(record, zone, nowMs)]),
  ) as ByZone<ZoneFinding>,
  modelVersion: record.modelVersion,
  listWorst: () => listWorstPlaces(record.answers),
});

/** For which mix do fewest strands speak, and from which places? */
export const findLeastProven = (record: ConsultationRecord, nowMs: number): Spoken | undefined =>
  findLeastSpoken(listSpoken(gatherToCount(record, nowMs)));

/** What do strands and answers say of the hair? */
function findHair(record: ConsultationRecord, nowMs: number): Omit<Findings, 'stop'> {
  const { client } = record.answers;
  const toCount = gatherToCount(record, nowMs);
  const { newest, found } = toCount;
  return {
    isLifting: client?.service === undefined || isLifting(client.service),
    zones: found,
    risk: judgeRisk(record),
    strands: countStrands(toCount),
    shortBy: Math.max(
      0,
      (client?.targetLevel ?? 0) - Math.min(10, ...newest.map(({ outcome }) => outcome.level ?? 10)),
    ),
    isEven: newest.every(({ outcome }) => (outcome.evenness ?? 'even') === 'even'),
  };
}

/** What do the strands, the answers and the stops say together, at this moment? */
export function gatherFindings(record: ConsultationRecord, settings: Settings, nowMs: number): Findings {
  const stops = listOpenStops(record, settings);
  return {
    ...findHair(record, nowMs),
    stop: stops.some(isAbsoluteRule) ? 'absolute' : stops.length > 0 ? 'judgement' : 'none',
  };
}

/** What does the table suggest for this client now? */
export const suggestFor = (record: ConsultationRecord, settings: Settings, nowMs: number): Decision =>
  suggestDecision(gatherFindings(record, settings, nowMs));

/** Ends that are left out: failed ones still say that this hair is rough, untested ones speak neither way. */
const leftOut = {
  notPlanned: 'notPlanned',
  untested: 'sound',
  sound: 'sound',
  rough: 'rough',
  gummy: 'rough',
  broken: 'rough',
} as const satisfies Record<ZoneFinding, ZoneFinding>;

/** What would the table suggest for the rest of these findings if the ends were left out? Stops apart. */
export const suggestWithoutEnds = (findings: Omit<Findings, 'stop'>): Decision =>
  suggestDecision({
    ...findings,
    zones: { ...findings.zones, ends: leftOut[findings.zones.ends] },
    stop: 'none',
  });

/** What does the table say of this zone's bowl, stops apart? */
export const suggestForZone = (record: ConsultationRecord, zone: Zone, nowMs: number): Decision => {
  const hair = findHair(record, nowMs);
  return zone === 'ends' ? suggestDecision({ ...hair, stop: 'none' }) : suggestWithoutEnds(hair);
};
