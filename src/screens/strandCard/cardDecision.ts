import { type Decision, isMixingDecision } from '../../../shared/judgement/decisions';
import { findLimits, type Limits } from '../../../shared/judgement/limits';
import { limitOnScalp } from '../../../shared/judgement/onScalp';
import { type ConsultationRecord, findStrand, type StrandRecord } from '../../../shared/records/record';
import type { Settings } from '../../../shared/records/settings';

/** What was decided on the strength of a strand, and how strong and how long its zone may be mixed under it. */
export interface CardDecision {
  readonly decision: Decision;
  readonly by: string;
  readonly atMs: number;
  /** null: under this decision nothing goes on hair from there. */
  readonly limits: Limits | null;
}

/** null while nothing is decided, and on the card of a strand that does not speak for its zone or for this plan. */
export function findCardDecision(
  record: ConsultationRecord,
  strand: StrandRecord,
  settings: Settings,
  nowMs: number,
): CardDecision | null {
  const { decision } = record;
  if (decision === null || decision.planKey !== strand.planKey || strand.outcome === null) return null;
  if (findStrand(record, strand.zone) !== strand || strand.ended?.how === 'discarded') return null;
  const isLeftOut = decision.decision === 'endsOut' && strand.zone === 'ends';
  const limits = limitOnScalp(record, strand, settings, findLimits(record, strand, nowMs));
  const isMixed = isMixingDecision(decision.decision) && !isLeftOut && limits.maxMinutes > 0;
  const { by, atMs } = decision;
  return { decision: decision.decision, by, atMs, limits: isMixed ? limits : null };
}
