import { isAnotherDay } from '../records/passedDay';
import type { ConsultationRecord } from '../records/record';
import type { Settings } from '../records/settings';
import { findFelt, findLastRinse } from '../records/tonerProof';
import type { Zone } from '../records/zones';
import { msPerMinute } from '../units/time';
import { findSkinTestRefusal, findTestRefusal, type PermitRefusal } from './permitRefusal';
import { ASSUMED_FELT_FOR_MIN } from './tonerLimits';

/**
 * What stands in the way of a toner for this zone, at this moment? null: nothing does.
 * It asks for no strand of its own: what is felt is the very hair, wet, after the rinse. Only hair that springs back,
 * and did not break under what was rinsed last, takes another bowl on that rinse, and only while it is wet
 * (ASSUMED_FELT_FOR_MIN). Slow hair takes none, not even one that
 * only deposits: how weak it is nobody can see, and it can be toned on another visit, with a strand. A toner is a dye, so
 * its own skin test is asked for beside that of what she came for. Reads the record alone.
 * Checked in tests/shared/judgement/toner.test.ts.
 */
export function findTonerRefusal(
  record: ConsultationRecord,
  zone: Zone,
  settings: Settings,
  nowMs: number,
): PermitRefusal | null {
  const before = findTestRefusal(record, settings) ?? findSkinTestRefusal(record, settings, nowMs, 'tone');
  if (before !== null) return before;
  if (isAnotherDay(record, nowMs)) return { code: 'anotherDay' };
  if (findLastRinse(record, zone) === null) return { code: 'notRinsed' };
  const felt = findFelt(record, zone);
  if (felt === null) return { code: 'stretchUnfelt' };
  if (felt.stretch !== 'springsBack') return { code: 'stretchFails' };
  return nowMs - felt.atMs > ASSUMED_FELT_FOR_MIN * msPerMinute ? { code: 'stretchDried' } : null;
}
