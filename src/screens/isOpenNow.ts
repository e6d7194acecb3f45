import { advance, type Consultation } from '../../machines/consultation/consultation';
import { classify, type RawEvent } from '../../shared/records/classify';
import type { Settings } from '../../shared/records/settings';

/** Nobody in particular: the judge wants a name, and nothing is kept here. */
export const ANYONE = '?';

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
  const context = { settings, settingsId: 0, by: ANYONE, atMs: nowMs, inheritsStop: false };
  const event = classify(consultation.record, raw, context);
  return event.ok && advance(consultation, event.value).ok;
}
