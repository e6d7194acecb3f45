import { isAtLeastAsBad } from '../records/gradeOutcome';
import { formHistoryKey } from '../records/planKey';
import { type ConsultationRecord, findStrand, isAnythingOnHead, type StrandRecord } from '../records/record';
import type { Settings } from '../records/settings';
import type { Zone } from '../records/zones';
import { accept, type Result, refuse } from '../result';
import { type Decision, isFreer, isMixingDecision } from './decisions';
import { isForThisPlan, isLapsed, listPlannedZones, suggestFor } from './findings';
import { listClosedMixes, type Mix, nameMix } from './mixes';
import { isAbsoluteRule, type RuleId } from './rules';
import { judgeSkinTest } from './skinTest';
import { isIncompatibilityDue, listStops, listUnsaid } from './stops';

declare const permitBrand: unique symbol;

/** Leave to weigh a strand's own few grams. Never for a head. */
export interface TestPermit {
  readonly [permitBrand]: 'test';
  readonly kind: 'test';
  readonly maxG: number;
}

/** Leave to weigh a bowl for one zone, within what was tested and decided. Derived anew at every use, never stored. */
export interface MixPermit {
  readonly [permitBrand]: 'mix';
  readonly kind: 'mix';
  readonly zone: Zone;
  readonly strand: number;
  readonly decision: Decision;
  readonly tested: Mix;
  /** The strongest developer this decision allows, in per cent; never above what was tested. */
  readonly maxDeveloperPercent: number;
  readonly maxMinutes: number;
}

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
        | 'strandFailed'
        | 'mixClosed'
        | 'strandUsed'
        | 'notDecided'
        | 'freerThanSuggested'
        | 'endsLeftOut';
    };

const issued = new WeakSet<object>();

/** Was this permit issued here? A forged object is refused at run time whatever its type claims. */
export const isIssued = (permit: TestPermit | MixPermit): boolean => issued.has(permit);

/** At most so much is mixed for a strand: ASSUMED, a few grams cover fifty hairs. */
export const ASSUMED_TEST_MAX_G = 20;

function findRefusalBeforeTest(record: ConsultationRecord, settings: Settings): PermitRefusal | null {
  if (record.opened === null || record.ended !== null) return { code: 'closed' };
  if (record.parked !== null) return { code: 'parked' };
  if (record.reaction !== null) return { code: 'reaction' };
  const stops = listStops(record.answers, settings);
  const absolute = stops.filter(isAbsoluteRule);
  if (record.skinTest?.seen === 'reaction') absolute.push('stop.skinTestPositive');
  if (record.incompatibility?.seen === 'reacted') absolute.push('stop.incompatibilityReacted');
  if (record.inheritedStop) absolute.push('stop.inherited');
  if (absolute.length > 0) return { code: 'stopped', rules: absolute };
  if (listUnsaid(record.answers, settings).length > 0) return { code: 'stepUnsaid' };
  const lifted = new Set(record.overrides.map(({ rule }) => rule));
  const open = stops.filter((rule) => !lifted.has(rule));
  if (open.length > 0) return { code: 'forAJudgement', rules: open };
  const isCleared =
    record.incompatibility?.seen === 'nothing' &&
    record.incompatibility.historyKey === formHistoryKey(record.answers);
  return isIncompatibilityDue(record.answers) && !isCleared ? { code: 'incompatibilityOpen' } : null;
}

/** May a strand be tested now? The skin test may still be waiting: the strand is off the head. */
export function issueTestPermit(
  record: ConsultationRecord,
  settings: Settings,
): Result<TestPermit, PermitRefusal> {
  const refusal = findRefusalBeforeTest(record, settings);
  if (refusal !== null) return refuse(refusal);
  const permit = { kind: 'test', maxG: ASSUMED_TEST_MAX_G } as TestPermit;
  issued.add(permit);
  return accept(permit);
}

const skinTestRefusals = {
  missing: 'skinTestMissing',
  waiting: 'skinTestWaiting',
  lapsed: 'skinTestLapsed',
} as const;

function findStrandRefusal(
  record: ConsultationRecord,
  strand: StrandRecord | undefined,
  nowMs: number,
): PermitRefusal | null {
  if (strand?.outcome == null) return { code: 'noOutcome' };
  if (!isForThisPlan(strand, record)) return { code: 'outcomeOfAnotherPlan' };
  if (isLapsed(strand, nowMs)) return { code: 'outcomeLapsed' };
  if (isAtLeastAsBad(strand.outcome.grade, 'gummy')) return { code: 'strandFailed' };
  if (listClosedMixes(record, strand).length > 0) return { code: 'mixClosed' };
  const isUsed = record.bowls.some((bowl) => bowl.strand === strand.number && bowl.state !== 'thrown');
  return isUsed ? { code: 'strandUsed' } : null;
}

function findDecisionRefusal(
  record: ConsultationRecord,
  zone: Zone,
  strand: StrandRecord,
  settings: Settings,
  nowMs: number,
): PermitRefusal | null {
  const { decision } = record;
  if (decision === null || !isMixingDecision(decision.decision)) return { code: 'notDecided' };
  if (decision.seq < (strand.outcome?.seq ?? Number.POSITIVE_INFINITY)) return { code: 'notDecided' };
  const isLifted = record.overrides.some(({ rule }) => rule === 'judgement.freerThanSuggested');
  if (isFreer(decision.decision, suggestFor(record, settings, nowMs)) && !isLifted) {
    return { code: 'freerThanSuggested' };
  }
  return decision.decision === 'endsOut' && zone === 'ends' ? { code: 'endsLeftOut' } : null;
}

/** One trade step of developer (10 volumes) in per cent: the trade's nominal table, common practice. */
const ONE_STEP_PERCENT = 3;
/** When the developer cannot go down any further, a gentler mix stays shorter by this share: ASSUMED. */
export const ASSUMED_GENTLER_TIME = 0.75;

/** How far does this decision go below what was tested? 10 vol deposits, 20 vol lifts 1–2: common practice. */
function limitBy(decision: Decision, tested: Mix): Pick<MixPermit, 'maxDeveloperPercent' | 'maxMinutes'> {
  const { developerPercent, minutes } = tested;
  const isLowest = developerPercent <= ONE_STEP_PERCENT;
  const lower = isLowest ? developerPercent : developerPercent - ONE_STEP_PERCENT;
  const shorter = isLowest ? minutes * ASSUMED_GENTLER_TIME : minutes;
  switch (decision) {
    case 'gentler':
      return { maxDeveloperPercent: lower, maxMinutes: shorter };
    case 'smallerLift':
      return { maxDeveloperPercent: Math.min(lower, 2 * ONE_STEP_PERCENT), maxMinutes: shorter };
    case 'depositOnly':
      return { maxDeveloperPercent: Math.min(developerPercent, ONE_STEP_PERCENT), maxMinutes: minutes };
    default:
      return { maxDeveloperPercent: developerPercent, maxMinutes: minutes };
  }
}

/**
 * May a bowl be weighed for this zone now, and how strong may it be?
 * The only maker of a `MixPermit`: from a recorded, current, sound or rough outcome and a decision made after it.
 * It reads the record alone and knows nothing of the chart, so that each refuses on its own.
 * Checked in tests/shared/judgement/permit.test.ts.
 */
export function issuePermit(
  record: ConsultationRecord,
  zone: Zone,
  settings: Settings,
  nowMs: number,
): Result<MixPermit, PermitRefusal> {
  const before = findRefusalBeforeTest(record, settings);
  if (before !== null) return refuse(before);
  const skinTest = judgeSkinTest(record, settings.profile, nowMs);
  if (skinTest === 'missing' || skinTest === 'waiting' || skinTest === 'lapsed') {
    return refuse({ code: skinTestRefusals[skinTest] });
  }
  if (!listPlannedZones(record.answers.client?.reach).includes(zone))
    return refuse({ code: 'zoneNotPlanned' });
  const strand = findStrand(record, zone);
  const byStrand = findStrandRefusal(record, strand, nowMs);
  if (byStrand !== null || strand === undefined) return refuse(byStrand ?? { code: 'noOutcome' });
  const byDecision = findDecisionRefusal(record, zone, strand, settings, nowMs);
  if (byDecision !== null || record.decision === null) return refuse(byDecision ?? { code: 'notDecided' });
  const tested = nameMix(strand);
  const permit = {
    kind: 'mix',
    zone,
    strand: strand.number,
    decision: record.decision.decision,
    tested,
    ...limitBy(record.decision.decision, tested),
  } as MixPermit;
  issued.add(permit);
  return accept(permit);
}

/** Is anything still on the head, so that nobody may leave? */
export const mustRinseFirst = isAnythingOnHead;
