import { type Decision, isMixingDecision } from '../../shared/judgement/decisions';
import { issuePermit } from '../../shared/judgement/permit';
import { listPlannedZones } from '../../shared/judgement/plannedZones';
import type { ConsultationRecord } from '../../shared/records/record';
import type { Settings } from '../../shared/records/settings';
import type { KnotReason } from '../parts/StrandRail';

/**
 * Why is the knot tied? null when a bowl may be weighed for at least one planned zone at this moment, and as long as
 * one that was weighed is standing by or on the head; a reaction or a stop ties it whatever is on. Asks for the permit
 * itself, so that the rail never says other than the gate does; it keeps none.
 * Checked in tests/src/screens/screenOf.test.tsx.
 */
export function findKnot(record: ConsultationRecord, settings: Settings, nowMs: number): KnotReason {
  const planned = listPlannedZones(record.answers.client?.reach);
  const asked = (planned.length === 0 ? (['lengths'] as const) : planned).map((zone) =>
    issuePermit(record, zone, settings, nowMs),
  );
  const isInUse = record.bowls.some(({ state }) => state === 'weighed' || state === 'on');
  if (asked.some((permit) => permit.ok)) return null;
  const [first] = asked;
  const code = first === undefined || first.ok ? 'noOutcome' : first.error.code;
  if (code === 'notDecided' && record.decision !== null) return nameUnmixed(record.decision.decision);
  return isInUse && code !== 'reaction' && code !== 'stopped' ? null : code;
}

/** What was decided, where that mixes nothing. */
const nameUnmixed = (decision: Decision): KnotReason =>
  isMixingDecision(decision) ? 'notDecided' : decision;
