import { formPlanKey } from '../records/planKey';
import { type ConsultationRecord, findStrand, type StrandRecord } from '../records/record';
import type { Settings } from '../records/settings';
import type { ByZone, Zone } from '../records/zones';
import { zones } from '../records/zones';
import type { Decision } from './decisions';
import { type Findings, suggestDecision, type ZoneFinding } from './decisionTable';
import { judgeRisk } from './risk';
import { isAbsoluteRule } from './rules';
import { isLifting, listOpenStops } from './stops';

/** After so many days an outcome lapses. Assumed because hair goes on being washed and ironed meanwhile. */
export const ASSUMED_OUTCOME_LAPSES_DAYS = 28;
const OUTCOME_LAPSES_MS = ASSUMED_OUTCOME_LAPSES_DAYS * 86_400_000;

const plannedZones = {
  fullHead: ['lengths', 'ends'],
  endsOut: ['lengths'],
  roots: ['roots'],
} as const satisfies Record<string, readonly Zone[]>;

/** Which zones does the plan colour? Two places for a full head, one of them the ends. */
export const listPlannedZones = (reach: keyof typeof plannedZones | undefined): readonly Zone[] =>
  reach === undefined ? [] : plannedZones[reach];

/** Is this outcome too old to stand for today's hair? */
export const isLapsed = (strand: StrandRecord, nowMs: number): boolean =>
  strand.outcome !== null && nowMs - strand.outcome.atMs > OUTCOME_LAPSES_MS;

/** Does this strand stand for the plan as it is now? Its age is judged apart, from the time of asking. */
export const isForThisPlan = (strand: StrandRecord, record: ConsultationRecord): boolean =>
  !strand.isVoid && strand.planKey === formPlanKey(record.answers);

const findZone = (record: ConsultationRecord, zone: Zone, nowMs: number): ZoneFinding => {
  const { client } = record.answers;
  if (!listPlannedZones(client?.reach).includes(zone)) return 'notPlanned';
  const strand = findStrand(record, zone);
  if (strand?.outcome == null || !isForThisPlan(strand, record) || isLapsed(strand, nowMs)) return 'untested';
  return strand.outcome.grade;
};

/** What do the strands, the answers and the stops say together, at this moment? */
export function gatherFindings(record: ConsultationRecord, settings: Settings, nowMs: number): Findings {
  const { client } = record.answers;
  const tested = record.strands.filter(
    (strand) => strand.outcome !== null && isForThisPlan(strand, record) && !isLapsed(strand, nowMs),
  );
  const levels = tested.map(({ outcome }) => outcome?.level ?? 0);
  const stops = listOpenStops(record, settings);
  return {
    isLifting: client?.service === undefined || isLifting(client.service),
    zones: Object.fromEntries(
      zones.map((zone) => [zone, findZone(record, zone, nowMs)]),
    ) as ByZone<ZoneFinding>,
    risk: judgeRisk(record.answers),
    strands: tested.length,
    shortBy: Math.max(0, (client?.targetLevel ?? 0) - Math.min(10, ...levels)),
    isEven: tested.every(({ outcome }) => outcome?.evenness === 'even'),
    stop: stops.some(isAbsoluteRule) ? 'absolute' : stops.length > 0 ? 'judgement' : 'none',
  };
}

/** What does the table suggest for this client now? */
export const suggestFor = (record: ConsultationRecord, settings: Settings, nowMs: number): Decision =>
  suggestDecision(gatherFindings(record, settings, nowMs));
