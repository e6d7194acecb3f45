import type { WarmthTimes } from '../../../shared/heat/warmthTrial';
import type { Raw, RawForm } from '../../../shared/records/readForm';
import { formatQuantity } from '../../../shared/units/format';
import type { UnitSettings } from '../../../shared/units/quantity';
import { readRows } from '../../parts/form/sheet/places';
import type { Words } from '../../words/words';

/** What a spray's page is called: by its name as it stands in the field. */
export function nameSpray({ name }: RawForm, words: Words): string {
  return typeof name === 'string' && name.trim() !== '' ? name : words.settings.unnamedSpray;
}

/** Seconds of a run in words; null: warmth was not felt within the cap. */
export const sayRun = (seconds: number | null, words: Words, units: UnitSettings): string =>
  seconds === null ? words.warmthTrial.notFelt : formatQuantity(seconds, 'seconds', units, words.locale);

/** One trial as its fields have it; a run in which nothing was felt is unknown. */
export const writeTrial = ({ bareS, sprayedS }: WarmthTimes, atMs: number): RawForm => ({
  atMs,
  bareS: bareS === null ? 'unknown' : String(bareS),
  sprayedS: sprayedS === null ? 'unknown' : String(sprayedS),
});

const readRun = (raw: Raw): number | null => (raw === 'unknown' ? null : Number(raw));

/** How the last trial of this spray went, in a line; null before the first. */
export function sayLastTrial({ trial }: RawForm, words: Words, units: UnitSettings): string | null {
  const [tried] = readRows(trial);
  if (tried === undefined) return null;
  return words.warmthTrial.last(
    words.moments.shortDay(Number(tried.atMs)),
    sayRun(readRun(tried.bareS), words, units),
    sayRun(readRun(tried.sprayedS), words, units),
  );
}
