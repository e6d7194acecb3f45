import type { Consultation } from '../../../machines/consultation/consultation';
import { formatQuantity } from '../../../shared/units/format';
import type { UnitSettings } from '../../../shared/units/quantity';
import { msPerMinute } from '../../../shared/units/time';
import { nameClock } from '../../parts/clockSaid';
import type { Words } from '../../words/words';
import { sayWhose } from '../bar/sayWhose';
import { findNextCall } from '../clocks/findNextCall';

/**
 * So long before a call no print window is opened. Assumed because it may hold the page, and whoever looks for the
 * printer and its paper is back within five minutes.
 */
const ASSUMED_PRINT_WINDOW_MS = 5 * msPerMinute;

/** Who calls too soon for a card to be printed now, and when? null where nobody does. */
export function whyNotPrint(
  open: readonly Consultation[],
  nowMs: number,
  words: Words,
  units: UnitSettings,
): string | null {
  const next = findNextCall(open, nowMs);
  if (next === null || next.atMs - nowMs > ASSUMED_PRINT_WINDOW_MS) return null;
  const number = formatQuantity(next.strandNumber ?? 0, 'count', units, words.locale);
  const whose = [sayWhose(next.consultation, words, units), nameClock(next.clock, number, words)].join(' · ');
  const time = words.moments.time(next.atMs);
  return next.atMs <= nowMs ? words.strandCard.callsNow(whose, time) : words.strandCard.callsAt(whose, time);
}
