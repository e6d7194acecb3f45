import { findAnotherPlace, type Snip } from '../../../shared/hair/whereToSnip';
import { ASSUMED_STRANDS_WHEN_HIGH } from '../../../shared/judgement/decisionTable';
import { gatherFindings, isForThisPlan } from '../../../shared/judgement/findings';
import type { ConsultationRecord } from '../../../shared/records/record';
import type { Settings } from '../../../shared/records/settings';
import { viewHair } from '../map/viewHair';

/** From where is one more strand asked for, though each zone has its own? Null where they are enough or one is missing. */
export function findAnother(
  record: ConsultationRecord,
  settings: Settings,
  nowMs: number,
): Snip['place'] | null {
  const { risk, strands, zones } = gatherFindings(record, settings, nowMs);
  if (risk !== 'high' || strands >= ASSUMED_STRANDS_WHEN_HIGH) return null;
  if (strands === 0 || Object.values(zones).includes('untested')) return null;
  const tested = record.strands.filter((strand) => isForThisPlan(strand, record));
  return findAnotherPlace(viewHair(record.answers, settings).snips, tested);
}
