import type { SkinTestToken } from '../records/event';
import type { ConsultationRecord } from '../records/record';
import type { LocalProfile } from '../records/settings';
import { msPerDay, msPerHour } from '../units/time';

/** When may the skin test be read at the earliest, under this profile? */
export const findReadableAtMs = (putOnAtMs: number, profile: LocalProfile): number =>
  putOnAtMs + profile.skinTestWaitH * msPerHour;

/**
 * How does the skin test stand at this moment? Judged anew at every event; a positive one stays positive. It is clear
 * only when it was read after the whole wait, whatever the wait was said to be at the time.
 * "Clear" says that no reaction was seen, never that the product is safe: of 42 people known to be allergic 38
 * noticed a 45-minute open application on the forearm (published: Coenraads et al., Dermatitis 2018).
 */
export function judgeSkinTest(
  record: Pick<ConsultationRecord, 'answers' | 'skinTest'>,
  profile: LocalProfile,
  nowMs: number,
): SkinTestToken {
  const { skinTest } = record;
  if (skinTest?.seen === 'reaction') return 'positive';
  const service = record.answers.client?.service;
  if (service !== undefined && !profile.skinTestFor.includes(service)) return 'notNeeded';
  if (skinTest === null) return 'missing';
  const ageMs = nowMs - skinTest.putOnAtMs + skinTest.olderByMs;
  if (ageMs > profile.skinTestLapsesDays * msPerDay) return 'lapsed';
  const isReadInTime = skinTest.atMs >= findReadableAtMs(skinTest.putOnAtMs, profile);
  return skinTest.seen === 'nothing' && isReadInTime ? 'clear' : 'waiting';
}
