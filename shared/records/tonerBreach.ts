import { ASSUMED_TONER_MAX_MIN, TONER_MAX_PERCENT } from '../judgement/tonerLimits';
import { isTestedLine } from '../judgement/tonerLine';
import type { BowlRecord, ConsultationRecord } from './record';

/** What is wrong with a toner that a record claims. */
export type TonerBreach =
  | 'tonerWithoutStretch'
  | 'tonerWithoutRinse'
  | 'tonerOnWeakHair'
  | 'tonerBeforeRinse'
  | 'tonerOfTestedLine'
  | 'tonerTooStrong';

/**
 * Does this toner lack what its gate asks for? By its own proof, and by bowls and strands of the record alone: a bowl of its
 * zone that was rinsed, hair felt wet after that and springing back, and a line that no strand was in before. Checked in tests/shared/records/tonerBreach.test.ts.
 */
export function findTonerBreach(
  bowl: BowlRecord,
  record: Pick<ConsultationRecord, 'bowls' | 'strands'>,
): TonerBreach | null {
  const { toner: proof, zone } = bowl;
  if (proof === null) return 'tonerWithoutStretch';
  if (!record.bowls.some((each) => each.zone === zone && each.rinsedSeq === proof.rinsedSeq)) {
    return 'tonerWithoutRinse';
  }
  if (proof.stretch !== 'springsBack') return 'tonerOnWeakHair';
  if (proof.stretchSeq < proof.rinsedSeq || bowl.seq < proof.stretchSeq) return 'tonerBeforeRinse';
  if (isTestedLine(record, bowl.line, bowl.seq)) return 'tonerOfTestedLine';
  const isBeyond =
    bowl.developerPercent > TONER_MAX_PERCENT || bowl.minutes > ASSUMED_TONER_MAX_MIN || bowl.heat !== 'none';
  return isBeyond ? 'tonerTooStrong' : null;
}
