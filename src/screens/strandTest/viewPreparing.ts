import type { Consultation } from '../../../machines/consultation/consultation';
import type { StrandFact } from '../../../machines/consultation/facts';
import type { Chance } from '../../../shared/judgement/chance/estimate';
import { judgeChance } from '../../../shared/judgement/chance/judgeChance';
import { ASSUMED_STRANDS_WHEN_HIGH } from '../../../shared/judgement/decisionTable';
import { gatherFindings } from '../../../shared/judgement/findings';
import { issueTestPermit } from '../../../shared/judgement/permit';
import type { PermitRefusal } from '../../../shared/judgement/permitRefusal';
import { judgeRisk, listRedFlags, type RedFlag, type Risk } from '../../../shared/judgement/risk';
import { isAbsoluteRule, type RuleId } from '../../../shared/judgement/rules';
import { listStops, listUnsaid } from '../../../shared/judgement/stops';
import { findStrandKind } from '../../../shared/judgement/strandKind';
import { type ClockReading, readClock } from '../../../shared/records/clock';
import { isAtLeastAsBad } from '../../../shared/records/gradeOutcome';
import { passDay } from '../../../shared/records/passedDay';
import { findStrand, type OverrideRecord, type StrandRecord } from '../../../shared/records/record';
import type { Settings } from '../../../shared/records/settings';
import type { AskStep } from '../../../shared/records/steps';
import { type Zone, zones } from '../../../shared/records/zones';
import { isOpenNow } from '../isOpenNow';
import { findAnother } from './findAnother';

/** One zone of the plan, and how far its strand has come. */
export interface ZoneToTest {
  readonly zone: Zone;
  readonly state: Exclude<StrandFact, 'notPlanned'>;
  readonly strand: StrandRecord | null;
  /** It gummed or broke: what was tested stands, and speaks against that mix. */
  readonly hasFailed: boolean;
}

/** How the incompatibility test stands, and what its half hour says. */
export interface IncompatibilityView {
  readonly state: 'due' | 'running' | 'clear';
  readonly reading: ClockReading | null;
}

/** What stands before the first strand, and what can be done about it. */
export interface PreparingView {
  readonly zones: readonly ZoneToTest[];
  readonly flags: readonly RedFlag[];
  readonly risk: Risk;
  /** How likely strands like hers break, before any of hers has spoken. */
  readonly chance: Chance;
  /** A full strand for lightening and lift, a short one where colour is only deposited. */
  readonly kind: ReturnType<typeof findStrandKind>;
  /** Strands asked for in all at this risk, and those that count already. */
  readonly strandsAsked: number;
  readonly strandsTested: number;
  /** From where one more strand is asked for, when each zone has its own and that is too few. */
  readonly another: ReturnType<typeof findAnother>;
  readonly openRules: readonly RuleId[];
  readonly lifted: readonly OverrideRecord[];
  readonly incompatibility: IncompatibilityView | null;
  readonly unsaid: readonly AskStep[];
  /** What stands before a strand; null when one may be started. */
  readonly blockedBy: PermitRefusal | null;
  /** What was tested still stands for this plan: it may be kept as it is. */
  readonly mayKeep: boolean;
}

const hasGummedOrBroken = (strand: StrandRecord | null): boolean =>
  strand !== null && strand.outcome !== null && isAtLeastAsBad(strand.outcome.grade, 'gummy');

function viewIncompatibility({ record, state }: Consultation, nowMs: number): IncompatibilityView | null {
  const { incompatibility } = state.context.facts;
  if (incompatibility === 'notNeeded' || incompatibility === 'reacted') return null;
  const clock = record.clocks.findLast(({ kind }) => kind === 'incompatibility');
  const isRunning = incompatibility === 'running' && clock !== undefined;
  return { state: incompatibility, reading: isRunning ? readClock(clock, nowMs) : null };
}

/** Which strands are still to be tested, how carefully, and what stands in the way? */
export function viewPreparing(consultation: Consultation, settings: Settings, nowMs: number): PreparingView {
  const record = passDay(consultation.record, nowMs);
  const { facts } = consultation.state.context;
  const lifted = new Set<RuleId>(facts.overridden);
  const openRules = listStops(record.answers, settings).filter(
    (rule) => !isAbsoluteRule(rule) && !lifted.has(rule),
  );
  const permit = issueTestPermit(record, settings);
  const risk = judgeRisk(record);
  const planned = zones.flatMap((zone) => {
    const strand = facts.strands[zone];
    if (strand === 'notPlanned') return [];
    const found = findStrand(record, zone) ?? null;
    return [{ zone, state: strand, strand: found, hasFailed: hasGummedOrBroken(found) }];
  });
  return {
    zones: planned,
    flags: listRedFlags(record.answers),
    risk,
    chance: judgeChance(record.answers),
    kind: findStrandKind(record.answers.client?.service),
    strandsAsked: Math.max(planned.length, risk === 'high' ? ASSUMED_STRANDS_WHEN_HIGH : 1),
    strandsTested: gatherFindings(record, settings, nowMs).strands,
    another: findAnother(record, settings, nowMs),
    openRules,
    lifted: record.overrides,
    incompatibility: viewIncompatibility(consultation, nowMs),
    unsaid: listUnsaid(record.answers, settings),
    blockedBy: permit.ok ? null : permit.error,
    mayKeep: isOpenNow(consultation, { type: 'OUTCOME_KEPT' }, settings, nowMs),
  };
}
