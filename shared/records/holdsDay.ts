import { type ConsultationRecord, isAnythingOnHead } from './record';

/** Why a salon cannot be left for the night while this consultation is open. */
export type HoldsDay = 'onHead' | 'reaction' | 'strandRuns' | 'notWritten' | 'bowlStands';

/**
 * What of this open consultation holds the end of the day? The gravest alone; null where it may carry over to another
 * day: parked, waiting, or between two steps with nothing on. A bowl that stands is used up or thrown away first, since
 * nothing mixed is kept (common practice, no source). Checked in tests/shared/records/holdsDay.test.ts.
 */
export function findHoldsDay(record: ConsultationRecord): HoldsDay | null {
  if (isAnythingOnHead(record)) return 'onHead';
  if (record.ended !== null) return 'notWritten';
  if (record.reaction !== null) return 'reaction';
  if (record.strands.some(({ ended, carried }) => ended === null && carried === null)) return 'strandRuns';
  return record.bowls.some(({ state }) => state === 'weighed') ? 'bowlStands' : null;
}
