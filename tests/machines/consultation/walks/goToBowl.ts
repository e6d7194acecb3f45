import { advance, type Consultation } from '../../../../machines/consultation/consultation';
import { classify } from '../../../../shared/records/classify';
import { nameWay } from '../chartUnderTest';
import { goOnward } from './onward';
import { minuteMs, settingsById } from './rawTaps';

/** So many steps are enough from anywhere: two rounds of strands after every question was asked again. */
const STEPS = 90;

/**
 * Goes on carefully from here under the salon's first settings, until one more bowl is weighed or the consultation
 * ends. Null when it came so far; else where it got stuck, and on what.
 */
export function findDeadEnd(from: Consultation, inheritsStop: boolean): string | null {
  const [settings] = settingsById;
  if (settings === undefined) throw new Error('no settings');
  const bowlsMeant = from.record.bowls.length + 1;
  let [consultation, atMs, refused] = [from, from.record.newestAtMs, 'nothing'];
  for (let step = 0; step < STEPS; step += 1) {
    const { ended, bowls } = consultation.record;
    if (ended !== null || bowls.length >= bowlsMeant) return null;
    atMs += 3 * minuteMs;
    const raw = goOnward({ consultation, settings, atMs, bowlsMeant });
    const event = classify(consultation.record, raw, {
      settings,
      settingsId: 0,
      atMs,
      by: 'Opal',
      inheritsStop,
    });
    const next = event.ok ? advance(consultation, event.value) : event;
    if (next.ok) consultation = next.value;
    else refused = `${raw.type} ${JSON.stringify(next.error)}`;
  }
  return `${nameWay(consultation.state)}, last refused: ${refused}`;
}
