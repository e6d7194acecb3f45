import { ASSUMED_SAME_DAY_MS } from '../../shared/judgement/lapse';

/** What was said when the sound was last tried, and when. */
export interface SoundCheck {
  readonly answer: 'heard' | 'notHeard' | 'later';
  readonly atMs: number;
}

const answers: readonly unknown[] = ['heard', 'notHeard', 'later'] satisfies SoundCheck['answer'][];
const KEY = 'strandproof.soundCheck';

type Keep = Pick<globalThis.Storage, 'getItem' | 'setItem'>;

/**
 * Kept beside the records and in neither copy of them: it is about this tablet and this day, nothing is judged by it, and
 * where it is lost the sound is offered once more, which is the safe side. Null where nothing was said or can be read.
 */
export function readSoundCheck(keep: Keep): SoundCheck | null {
  try {
    const kept: unknown = JSON.parse(keep.getItem(KEY) ?? 'null');
    if (typeof kept !== 'object' || kept === null || !('answer' in kept) || !('atMs' in kept)) return null;
    const { answer, atMs } = kept;
    return answers.includes(answer) && typeof atMs === 'number' && Number.isSafeInteger(atMs)
      ? { answer: answer as SoundCheck['answer'], atMs }
      : null;
  } catch {
    return null;
  }
}

/** A browser that keeps nothing offers the sound anew with the next page. */
export function keepSoundCheck(keep: Keep, check: SoundCheck): void {
  try {
    keep.setItem(KEY, JSON.stringify(check));
  } catch {
    // Nothing is judged by it.
  }
}

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
