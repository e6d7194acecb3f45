import type { Consultation } from '../../machines/consultation/consultation';
import type { PermitRefusal } from '../../shared/judgement/permitRefusal';
import { findTestRefusal } from '../../shared/judgement/permitRefusal';
import { classify, type RawEvent } from '../../shared/records/classify';
import type { Settings } from '../../shared/records/settings';
import type { SubmitRefusal } from '../station/submitRefusal';
import { ANYONE } from './isOpenNow';

/** Why a tap was not taken, as far as a person can be told; damp hair is known to the screens alone. */
export type TapRefusal = SubmitRefusal | { readonly kind: 'dampHair' };

/** What holds a client whatever is tapped. Anything finer is the gate's to say of the taps it judges. */
const holding: readonly PermitRefusal['code'][] = ['closed', 'parked', 'reaction', 'stopped'];

/** Does any place of this hair still feel damp? */
export function isDamp({ answers }: Pick<Consultation['record'], 'answers'>): boolean {
  const { nape, mid, ends } = answers.feelHair ?? {};
  return [nape, mid, ends].includes('damp');
}

/** Would this strand be of a mix that a strand before it closed? */
function isOfClosedMix({ record }: Consultation, raw: RawEvent, settings: Settings, nowMs: number): boolean {
  const context = { settings, settingsId: 0, by: ANYONE, atMs: nowMs, inheritsStop: false };
  const event = classify(record, raw, context);
  return event.ok && event.value.type === 'STRAND_STARTED' && event.value.tokens.closedBy.length > 0;
}

/**
 * Why does the chart say "not now"? The stop or the gate is asked first, then the hair; where none of them knows, it
 * stays "not now". Checked in tests/src/screens/explainRefusal.test.tsx.
 */
export function explainRefusal(
  refusal: SubmitRefusal,
  consultation: Consultation,
  raw: RawEvent,
  settings: Settings,
  nowMs: number,
): TapRefusal {
  if (refusal.kind !== 'notNow') return refusal;
  const held = findTestRefusal(consultation.record, settings);
  if (held !== null && holding.includes(held.code)) return { kind: 'permit', permit: held };
  if (raw.type === 'STEP_CONFIRMED' && raw.answers?.step === 'feelHair' && isDamp(consultation.record)) {
    return { kind: 'dampHair' };
  }
  return isOfClosedMix(consultation, raw, settings, nowMs)
    ? { kind: 'permit', permit: { code: 'mixClosed' } }
    : refusal;
}
