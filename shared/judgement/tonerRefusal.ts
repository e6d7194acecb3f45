import { isAnotherDay } from '../records/passedDay';
import type { ConsultationRecord } from '../records/record';
import type { Settings } from '../records/settings';
import { findLastRinse, findStretch } from '../records/tonerProof';
import type { Zone } from '../records/zones';
import { findSkinTestRefusal, findTestRefusal, type PermitRefusal } from './permitRefusal';

/**
 * What stands in the way of a toner for this zone, at this moment? null: nothing does.
 * It asks for no strand of its own: what is felt is the very hair, wet, after the rinse. Only hair that springs back
 * takes another bowl that day. Slow hair takes none, not even one that only deposits: how weak it is nobody can see,
 * and it can be toned on another visit, with a strand. Reads the record alone.
 * Checked in tests/shared/judgement/toner.test.ts.
 */
export function findTonerRefusal(
  record: ConsultationRecord,
  zone: Zone,
  settings: Settings,
  nowMs: number,
): PermitRefusal | null {
  const before = findTestRefusal(record, settings) ?? findSkinTestRefusal(record, settings, nowMs);
  if (before !== null) return before;
  if (isAnotherDay(record, nowMs)) return { code: 'anotherDay' };
  const rinsedSeq = findLastRinse(record, zone);
  if (rinsedSeq === null) return { code: 'notRinsed' };
  const felt = findStretch(record, zone);
  if (felt === undefined || felt.seq < rinsedSeq) return { code: 'stretchUnfelt' };
  return felt.stretch === 'springsBack' ? null : { code: 'stretchFails' };
}
