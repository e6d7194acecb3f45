import { findAnotherPlace, type Snip } from '../../../shared/hair/whereToSnip';
import { ASSUMED_STRANDS_WHEN_HIGH } from '../../../shared/judgement/decisionTable';
import { findLeastProven, gatherFindings } from '../../../shared/judgement/findings';
import { planSnips } from '../../../shared/judgement/planSnips';
import type { ConsultationRecord } from '../../../shared/records/record';
import type { Settings } from '../../../shared/records/settings';

/**
 * Of which zone and from where is one more strand asked for, though each zone has its own? Of the mix that fewest speak for,
 * from the worst place that is missing. Null where they are enough, one is missing, or every place was tested.
 */
export function findAnother(
  record: ConsultationRecord,
  settings: Settings,
  nowMs: number,
): Pick<Snip, 'zone' | 'place'> | null {
  const { risk, strands, zones } = gatherFindings(record, settings, nowMs);
  if (risk !== 'high' || strands >= ASSUMED_STRANDS_WHEN_HIGH) return null;
  if (strands === 0 || Object.values(zones).includes('untested')) return null;
  const least = findLeastProven(record, nowMs);
  if (least === undefined) return null;
  const { zone, places } = least;
  const tested = places.map((place) => ({ zone, place }));
  const place = findAnotherPlace(planSnips(record.answers), tested);
  return place === null ? null : { zone, place };
}
