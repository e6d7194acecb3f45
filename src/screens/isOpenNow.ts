import { advance, type Consultation } from '../../machines/consultation/consultation';
import { classify, type RawEvent } from '../../shared/records/classify';
import type { Settings } from '../../shared/records/settings';

/** Nobody in particular: the judge wants a name, and nothing is kept here. */
export const ANYONE = '?';

/** What would this tap make of her? null where it is not taken. Judge and chart are the real ones; writes nothing. */
export function tryOut(
  consultation: Consultation,
  raw: RawEvent,
  settings: Settings,
  nowMs: number,
): Consultation | null {
  const context = { settings, settingsId: 0, by: ANYONE, atMs: nowMs, inheritsStop: false };
  const event = classify(consultation.record, raw, context);
  if (!event.ok) return null;
  const next = advance(consultation, event.value);
  return next.ok ? next.value : null;
}

/**
 * Would this tap be taken now?
 * Asks the very judge and chart that will take it, so that no button promises what the gate refuses. Writes nothing.
 * Checked in tests/src/screens/strandTest/strandScreens.test.tsx.
 */
export function isOpenNow(
  consultation: Consultation,
  raw: RawEvent,
  settings: Settings,
  nowMs: number,
): boolean {
  return tryOut(consultation, raw, settings, nowMs) !== null;
}
