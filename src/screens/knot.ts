import { type Decision, isMixingDecision } from '../../shared/judgement/decisions';
import { issuePermit, issueTonerPermit } from '../../shared/judgement/permit';
import type { PermitRefusal } from '../../shared/judgement/permitRefusal';
import { listPlannedZones } from '../../shared/judgement/plannedZones';
import type { BowlRecord, ConsultationRecord } from '../../shared/records/record';
import type { Settings } from '../../shared/records/settings';
import type { WayStep } from '../../shared/records/steps';
import { findLastRinse } from '../../shared/records/tonerProof';
import { findUseByMs } from '../../shared/records/useWithin';
import { zones } from '../../shared/records/zones';
import type { KnotReason } from '../parts/StrandRail';

/**
 * Why is the knot tied? null when a bowl may be weighed for at least one planned zone at this moment, and as long as
 * one that was weighed may still go on or is on the head; a reaction, a stop, or hair that gave way ties it whatever is on. Asks for the permit
 * itself, so that the rail never says other than the gate does; it keeps none.
 * Checked in tests/src/screens/screenOf.test.tsx.
 */
export function findKnot(record: ConsultationRecord, settings: Settings, nowMs: number): KnotReason {
  const planned = listPlannedZones(record.answers.client?.reach);
  const asked = (planned.length === 0 ? (['lengths'] as const) : planned).map((zone) =>
    issuePermit(record, zone, settings, nowMs),
  );
  const standing = record.bowls.filter(({ state }) => state === 'weighed' || state === 'on');
  const isTooOld = (bowl: BowlRecord) => bowl.state === 'weighed' && nowMs > findUseByMs(bowl, settings);
  if (asked.some((permit) => permit.ok)) return null;
  const [first] = asked;
  const code = first === undefined || first.ok ? 'noOutcome' : first.error.code;
  if (code === 'notDecided' && record.decision !== null) return nameUnmixed(record.decision.decision);
  if (standing.length === 0 || whateverIsOn.includes(code)) return code;
  return standing.every(isTooOld) ? 'bowlTooOld' : null;
}

const whateverIsOn: readonly PermitRefusal['code'][] = ['reaction', 'stopped', 'hairBroke', 'hairStretchy'];

/** What was decided, where that mixes nothing. */
const nameUnmixed = (decision: Decision): KnotReason =>
  isMixingDecision(decision) ? 'notDecided' : decision;

/**
 * The knot as the rail of one client says it: once her strands are used up, the next that may be mixed is a toner, which
 * asks for no strand. null as soon as one may be weighed on some length. Checked in tests/src/screens/screenOf.test.tsx.
 */
export function findRailKnot(record: ConsultationRecord, settings: Settings, nowMs: number): KnotReason {
  const knot = findKnot(record, settings, nowMs);
  if (knot !== 'strandUsed') return knot;
  const asked = zones
    .filter((zone) => findLastRinse(record, zone) !== null)
    .map((zone) => issueTonerPermit(record, zone, settings, nowMs));
  if (asked.some(({ ok }) => ok)) return null;
  const [first] = asked;
  return first === undefined || first.ok ? knot : first.error.code;
}

const isPastMix = (knot: KnotReason): boolean =>
  knot === 'strandUsed' || knot === 'hairBroke' || knot === 'hairStretchy';

/** Where on the rail is she? What was rinsed, with nothing left to weigh by a strand, is past the mix. */
export const findHere = (
  step: WayStep | null,
  knot: KnotReason,
  { bowls }: ConsultationRecord,
): WayStep | null =>
  step === 'mix' && isPastMix(knot) && bowls.some(({ state }) => state === 'rinsed') ? 'colourOn' : step;
