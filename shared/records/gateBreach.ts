import { isMixingDecision } from '../judgement/decisions';
import { isTooOldToCarry } from '../judgement/lapse';
import { isHotter, isSameLine, type Mix } from '../judgement/mixes';
import { isMadeStronger } from '../judgement/weighedBowl';
import type { BowlProof } from './bowlProof';
import { isAtLeastAsBad } from './gradeOutcome';
import type { ConsultationRecord } from './record';
import { findTonerBreach, type TonerBreach } from './tonerBreach';
import type { Zone } from './zones';

/** What is wrong with a record that claims a bowl. */
export type GateBreach =
  | TonerBreach
  | 'bowlWithoutStrand'
  | 'bowlWithoutOutcome'
  | 'bowlWithoutDecision'
  | 'bowlAfterFailedStrand'
  | 'bowlOfAnotherLine'
  | 'bowlTooStrong'
  | 'bowlLiftsOnCarried'
  | 'bowlOnOldStrand';

/** Is it stronger, longer, hotter or of another ratio than what was tested? A decision can only lower these. */
const isBeyond = (bowl: Mix, tested: Mix): boolean =>
  bowl.developerPercent > tested.developerPercent ||
  bowl.minutes > tested.minutes ||
  bowl.ratio !== tested.ratio ||
  isHotter(bowl.heat, tested.heat);

/** Was it decided after the outcome, and does that decision mix anything for this zone? */
const isDecided = ({ decision, decisionSeq, outcomeSeq }: BowlProof, zone: Zone): boolean =>
  decisionSeq > outcomeSeq && isMixingDecision(decision) && !(decision === 'endsOut' && zone === 'ends');

/** What is carried is only ever a deposit, on a strand that is not too old. */
function findCarriedBreach(carried: BowlProof['carried'], weighedAtMs: number): GateBreach | null {
  if (carried === null) return null;
  if (!depositing.includes(carried.service)) return 'bowlLiftsOnCarried';
  return isTooOldToCarry(carried.strandAtMs, weighedAtMs) ? 'bowlOnOldStrand' : null;
}

const depositing: readonly string[] = ['depositOnly', 'gloss', 'tone'];

/**
 * Does any bowl of this record lack what the gate asks for?
 * The record's own refusal: it looks at what stood in the log when each bowl was weighed, whatever was retracted later,
 * and knows neither chart nor permit. Checked in tests/shared/records/gateBreach.test.ts.
 */
export function findGateBreach(record: ConsultationRecord): GateBreach | null {
  for (const bowl of record.bowls) {
    if (bowl.kind === 'toner') {
      const lacks = findTonerBreach(bowl, record);
      if (lacks !== null) return lacks;
      continue;
    }
    const strand = record.strands.find(({ number }) => number === bowl.strand);
    if (strand === undefined || strand.zone !== bowl.zone) return 'bowlWithoutStrand';
    if (bowl.proof === null) return 'bowlWithoutOutcome';
    if (!isDecided(bowl.proof, bowl.zone)) return 'bowlWithoutDecision';
    if (isAtLeastAsBad(bowl.proof.grade, 'gummy')) return 'bowlAfterFailedStrand';
    if (!isSameLine(bowl.line, bowl.proof.tested.line)) return 'bowlOfAnotherLine';
    if (isBeyond(bowl, bowl.proof.tested) || isMadeStronger(bowl)) return 'bowlTooStrong';
    const breach = findCarriedBreach(bowl.proof.carried, bowl.atMs);
    if (breach !== null) return breach;
  }
  return null;
}
