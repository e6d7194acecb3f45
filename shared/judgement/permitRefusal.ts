import type { ClientAnswers } from '../records/forms/client';
import { findGivenWay } from '../records/givenWay';
import { isAtLeastAsBad } from '../records/gradeOutcome';
import { isAnotherDay } from '../records/passedDay';
import { formHistoryKey, formPlanKey } from '../records/planKey';
import { type ConsultationRecord, findStrand, type StrandRecord } from '../records/record';
import type { Settings } from '../records/settings';
import { findLastRinse, listFelt } from '../records/tonerProof';
import type { Zone } from '../records/zones';
import { isFreer, isMixingDecision } from './decisions';
import { isForThisPlan, suggestFor } from './findings';
import { ASSUMED_SAME_DAY_MS, type CarriedHold, findCarriedHold, isLapsed } from './lapse';
import { listClosedMixes, nameTested } from './mixes';
import { listPlannedZones } from './plannedZones';
import { isAbsoluteRule, type RuleId } from './rules';
import { judgeSkinTest } from './skinTest';
import { isFreerLifted, isIncompatibilityDue, listOpenStops, listUnsaid } from './stops';

/** Why no mix may be made. Each has its words, and what clears it, in src/words. */
export type PermitRefusal =
  | { readonly code: 'stopped'; readonly rules: readonly RuleId[] }
  | { readonly code: 'forAJudgement'; readonly rules: readonly RuleId[] }
  | {
      readonly code:
        | 'closed'
        | 'parked'
        | 'reaction'
        | 'stepUnsaid'
        | 'incompatibilityOpen'
        | 'skinTestMissing'
        | 'skinTestWaiting'
        | 'skinTestLapsed'
        | 'zoneNotPlanned'
        | 'noOutcome'
        | 'outcomeOfAnotherPlan'
        | 'outcomeLapsed'
        | CarriedHold
        | 'strandTooShort'
        | 'strandFailed'
        | 'mixClosed'
        | 'strandUsed'
        | 'hairBroke'
        | 'hairStretchy'
        | 'notDecided'
        | 'freerThanSuggested'
        | 'endsLeftOut'
        | 'notRinsed'
        | 'stretchUnfelt'
        | 'stretchFails'
        | 'stretchDried'
        | 'anotherDay';
    };

/** What stands in the way of even a strand? The skin test may still be waiting: the strand is off the head. */
export function findTestRefusal(record: ConsultationRecord, settings: Settings): PermitRefusal | null {
  if (record.opened === null || record.ended !== null) return { code: 'closed' };
  if (record.parked !== null) return { code: 'parked' };
  if (record.reaction !== null) return { code: 'reaction' };
  const open = listOpenStops(record, settings);
  const absolute = open.filter(isAbsoluteRule);
  if (absolute.length > 0) return { code: 'stopped', rules: absolute };
  if (listUnsaid(record.answers, settings).length > 0) return { code: 'stepUnsaid' };
  if (open.length > 0) return { code: 'forAJudgement', rules: open };
  const isCleared =
    record.incompatibility?.seen === 'nothing' &&
    record.incompatibility.historyKey === formHistoryKey(record.answers);
  return isIncompatibilityDue(record.answers) && !isCleared ? { code: 'incompatibilityOpen' } : null;
}

const skinTestRefusals = {
  missing: 'skinTestMissing',
  waiting: 'skinTestWaiting',
  lapsed: 'skinTestLapsed',
} as const;

/** Does the skin test keep a head back, of what she came for and of what is done `also`? Positive is a stop, found before. */
export function findSkinTestRefusal(
  record: ConsultationRecord,
  settings: Settings,
  nowMs: number,
  also?: ClientAnswers['service'],
): PermitRefusal | null {
  const skinTest = judgeSkinTest(record, settings.profile, nowMs, also);
  return skinTest === 'missing' || skinTest === 'waiting' || skinTest === 'lapsed'
    ? { code: skinTestRefusals[skinTest] }
    : null;
}

function findStrandRefusal(
  record: ConsultationRecord,
  strand: StrandRecord,
  settings: Settings,
  nowMs: number,
): PermitRefusal | null {
  if (strand.outcome === null) return { code: 'noOutcome' };
  if (!isForThisPlan(strand, record)) return { code: 'outcomeOfAnotherPlan' };
  const hold = findCarriedHold(strand, record, settings, nowMs);
  if (hold !== null) return { code: hold };
  if (isLapsed(strand, nowMs)) return { code: 'outcomeLapsed' };
  if (isAtLeastAsBad(strand.outcome.grade, 'gummy')) return { code: 'strandFailed' };
  if (listClosedMixes(record, { ...nameTested(strand), zone: strand.zone }).length > 0)
    return { code: 'mixClosed' };
  // Less than a whole minute in the mix is proof of no time on a head.
  if (nameTested(strand).minutes === 0) return { code: 'strandTooShort' };
  const isUsed = record.bowls.some((bowl) => bowl.strand === strand.number && bowl.state !== 'thrown');
  return isUsed ? { code: 'strandUsed' } : null;
}

function findDecisionRefusal(
  record: ConsultationRecord,
  strand: StrandRecord,
  settings: Settings,
  nowMs: number,
): PermitRefusal | null {
  const { decision } = record;
  if (decision === null || !isMixingDecision(decision.decision)) return { code: 'notDecided' };
  if (decision.planKey !== formPlanKey(record.answers)) return { code: 'notDecided' };
  if (decision.seq < (strand.outcome?.seq ?? Number.POSITIVE_INFINITY)) return { code: 'notDecided' };
  if (isFreer(decision.decision, suggestFor(record, settings, nowMs)) && !isFreerLifted(record)) {
    return { code: 'freerThanSuggested' };
  }
  return null;
}

/**
 * Hair that came back slow, or not at all, after its rinse, or broke under what was rinsed, takes nothing else that day
 * (ASSUMED_SAME_DAY_MS), whatever a new strand stood: the strand is not what was just on. On another visit a new strand
 * decides. Since model 5. common practice, no source.
 */
function findFeltRefusal(record: ConsultationRecord, zone: Zone, nowMs: number): PermitRefusal | null {
  const rinsedSeq = findLastRinse(record, zone);
  if (record.modelVersion < 5 || rinsedSeq === null) return null;
  const isWeakToday = listFelt(record, zone, rinsedSeq).some(
    ({ stretch, atMs }) => stretch !== 'springsBack' && nowMs - atMs <= ASSUMED_SAME_DAY_MS,
  );
  return isWeakToday ? { code: 'stretchFails' } : null;
}

/** Hair that gave way under what is on this head, or was: whatever zone it is, its strand did not foresee it. */
export function findGivenWayRefusal(record: ConsultationRecord, nowMs: number): PermitRefusal | null {
  const how = findGivenWay(record, nowMs);
  if (how === null) return null;
  return { code: how === 'broke' ? 'hairBroke' : 'hairStretchy' };
}

/** Were the ends left out, for this very plan? Then whatever their strand said is no question any more. */
const areLeftOut = ({ decision, answers }: ConsultationRecord, zone: Zone): boolean =>
  zone === 'ends' && decision?.decision === 'endsOut' && decision.planKey === formPlanKey(answers);

/**
 * What stands in the way of a bowl for this zone, at this moment? null: nothing does.
 * Reads the record alone and knows nothing of the chart, so that each refuses on its own.
 */
export function findMixRefusal(
  record: ConsultationRecord,
  zone: Zone,
  settings: Settings,
  nowMs: number,
): PermitRefusal | null {
  const before = findTestRefusal(record, settings) ?? findSkinTestRefusal(record, settings, nowMs);
  if (before !== null) return before;
  if (!listPlannedZones(record.answers.client?.reach).includes(zone)) return { code: 'zoneNotPlanned' };
  if (areLeftOut(record, zone)) return { code: 'endsLeftOut' };
  const givenWay = findGivenWayRefusal(record, nowMs);
  if (givenWay !== null) return givenWay;
  const strand = findStrand(record, zone);
  if (strand === undefined) return { code: 'noOutcome' };
  return (
    findFeltRefusal(record, zone, nowMs) ??
    findStrandRefusal(record, strand, settings, nowMs) ??
    findDecisionRefusal(record, strand, settings, nowMs) ??
    (isAnotherDay(record, nowMs) ? { code: 'anotherDay' } : null)
  );
}
