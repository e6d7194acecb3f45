import { formatCountdown } from '../../../shared/units/format';
import type { UnitSettings } from '../../../shared/units/quantity';
import { msPerSecond } from '../../../shared/units/time';
import { type NextDue, sayNextDue } from '../../parts/clockSaid';
import type { Words } from '../../words/words';
import type { BarDue } from './viewBar';

/** Whole seconds that have passed, never rounded up. */
const sayPassed = (ms: number): string =>
  formatCountdown(Math.floor(Math.max(0, ms) / msPerSecond) * msPerSecond);

/**
 * What is it, what is to be done, and in how long, or since when? A clock says STRAND or HEAD first; a reaction counts
 * up from when the colour was put on, or, once nothing is on her, from when it was told.
 * Checked in tests/src/screens/viewBar.test.tsx.
 */
export function sayBarDue(
  due: BarDue,
  nowMs: number,
  words: Words,
  units: UnitSettings,
): Pick<NextDue, 'name' | 'says' | 'digits' | 'tone'> {
  if (due.what === 'clock') {
    const said = sayNextDue(due.clock, due.strandNumber, nowMs, words, units);
    return due.clock.kind === 'dry' ? { ...said, tone: due.waiting === null ? 'running' : 'look' } : said;
  }
  return {
    name: words.bar.reaction,
    says: due.isOn ? words.bar.reactionOn : words.bar.reactionOff,
    digits: sayPassed(nowMs - due.sinceMs),
    tone: 'over',
  };
}
