import * as v from 'valibot';
import { ASSUMED_SAME_DAY_MS } from '../../shared/judgement/lapse';
import { type Kept, keep, readKept } from './keep';

/** What was said when the sound was last tried, and when. */
const schema = v.object({
  answer: v.picklist(['heard', 'notHeard', 'later']),
  atMs: v.pipe(v.number(), v.safeInteger()),
});
export type SoundCheck = Readonly<v.InferOutput<typeof schema>>;

const KEY = 'strandproof.soundCheck';

/**
 * Kept beside the records and in neither copy of them: it is about this tablet and this day, nothing is judged by it, and
 * where it is lost the sound is offered once more, which is the safe side. Null where nothing was said or can be read.
 */
export const readSoundCheck = (kept: Kept): SoundCheck | null => readKept(kept, KEY, schema);

/** A browser that keeps nothing offers the sound anew with the next page. */
export const keepSoundCheck = (kept: Kept, check: SoundCheck): void => keep(kept, KEY, check);

/**
 * Does the bar offer to try the sound, or say that it was not heard? Anew after twelve hours, which tells a day from the
 * next in any time zone, and where the clock was set back behind the answer; nothing once it was heard or put off.
 * Checked in tests/src/tablet/soundCheck.test.ts.
 */
export function findSoundCheck(check: SoundCheck | null, nowMs: number): 'offer' | 'notHeard' | null {
  if (check?.answer === 'notHeard') return 'notHeard';
  if (check === null || check.atMs > nowMs || nowMs - check.atMs > ASSUMED_SAME_DAY_MS) return 'offer';
  return null;
}
