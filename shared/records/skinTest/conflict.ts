import type { PermitRefusal } from '../../judgement/permitRefusal';
import { findReadableAtMs, judgeTest } from '../../judgement/skinTest';
import type { LocalProfile } from '../settings';
import type { SkinTestEvent } from './event';
import { asJudged, type SkinTest } from './skinTest';

/** Why something was not noted of a skin test, beside what is wrong with a field. */
export type SkinTestConflict =
  | { readonly kind: 'skinTestTooEarly'; readonly readableAtMs: number }
  | { readonly kind: 'permit'; readonly permit: PermitRefusal }
  | { readonly kind: 'notNow' };

const notNow: SkinTestConflict = { kind: 'notNow' };

/**
 * May this be noted of this test now? Nothing seen only after the whole wait and before it lapsed; a reaction at any
 * time, late ones too; what reacted is only taken back by name.
 */
export function findSkinTestConflict(
  test: SkinTest | null,
  event: SkinTestEvent,
  profile: LocalProfile,
): SkinTestConflict | null {
  const { type, payload, atMs } = event;
  if ((type === 'SKIN_TEST_PUT_ON') !== (test === null)) return notNow;
  if (type === 'SKIN_TEST_PUT_ON') {
    if (payload.putOnAtMs > atMs) return notNow;
    // Whoever does not agree that it is kept has to be here: without her visit there is nothing it could count for.
    if ((payload.consent === 'thisVisit') !== (payload.forVisit !== undefined)) return notNow;
    const readableAtMs = findReadableAtMs({ putOnAtMs: payload.putOnAtMs }, profile);
    return payload.seen === 'nothing' && atMs < readableAtMs
      ? { kind: 'skinTestTooEarly', readableAtMs }
      : null;
  }
  if (test === null || (test.takenBack !== null && type !== 'CLOCK_CORRECTED')) return notNow;
  if (type === 'SKIN_TEST_TAKEN_BACK') {
    return payload.what === 'reading' && test.seen === 'notReadYet' ? notNow : null;
  }
  if (type === 'CLOCK_PUT_AHEAD') {
    return test.seen === 'notReadYet' && test.putOnAtMs + payload.aheadMs <= atMs ? null : notNow;
  }
  if (type !== 'SKIN_TEST_READ') return null;
  const status = judgeTest(asJudged(test), profile, atMs);
  if (status === 'reaction') return notNow;
  if (payload.seen === 'reaction') return null;
  if (status === 'waiting') {
    return { kind: 'skinTestTooEarly', readableAtMs: findReadableAtMs(test, profile) };
  }
  return status === 'due' || status === 'clear'
    ? null
    : { kind: 'permit', permit: { code: 'skinTestLapsed' } };
}
