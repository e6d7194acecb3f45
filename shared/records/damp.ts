import { msPerMinute } from '../units/time';
import type { Clock } from './clock';
import type { FeelHairAnswers } from './forms/feelHair';
import type { ConsultationRecord } from './record';

type Felt = Partial<FeelHairAnswers>;

const touches = ['nape', 'mid', 'ends'] as const;

const isDamp = (felt: Felt): boolean => touches.some((touch) => felt[touch] === 'damp');

/** Told anew, or just another question of the step? Looked at again and still damp, everything is told as before. */
const isFeltAnew = (before: Felt, now: Felt): boolean =>
  touches.some((touch) => before[touch] !== now[touch]) || JSON.stringify(before) === JSON.stringify(now);

/** Since when is it damp, after this answer? From the newest time somebody felt it and it was; null where it is dry. */
export function findDampSince(
  { answers, dampSinceMs }: Pick<ConsultationRecord, 'answers' | 'dampSinceMs'>,
  now: Felt,
  atMs: number,
): number | null {
  if (!isDamp(now)) return null;
  return dampSinceMs === null || isFeltAnew(answers.feelHair ?? {}, now) ? atMs : dampSinceMs;
}

/** When was the wet stretch told, after this answer? Another question of the same step makes it no newer. */
export function findStretchAt(
  { answers, stretchAtMs }: Pick<ConsultationRecord, 'answers' | 'stretchAtMs'>,
  now: Felt,
  atMs: number,
): number | null {
  if (now.wetStretch === undefined) return null;
  const before = answers.feelHair ?? {};
  const isToldAnew = before.wetStretch !== now.wetStretch || JSON.stringify(before) === JSON.stringify(now);
  return stretchAtMs === null || isToldAnew ? atMs : stretchAtMs;
}

/**
 * After so long damp hair is felt again. Assumed because towel and cool air take about that long on fine hair, and who
 * comes back to hair that is still damp only starts it again. Dried without a hot tool: a dryer's heat would hide what
 * is to be felt, and no hot tool goes on damp hair.
 */
export const ASSUMED_DRYING_MIN = 10;
const DRYING_MS = ASSUMED_DRYING_MIN * msPerMinute;

/**
 * When is the hair to be felt again? A clock like any other, read by `readClock`; null while nothing dries.
 * It stands in no log: it follows from what was felt. Checked in tests/shared/records/damp.test.ts.
 */
export function findDryingClock({ dampSinceMs }: Pick<ConsultationRecord, 'dampSinceMs'>): Clock | null {
  if (dampSinceMs === null) return null;
  return {
    id: 'dry',
    kind: 'dry',
    zone: null,
    startedAtMs: dampSinceMs,
    looks: null,
    dueAtMs: dampSinceMs + DRYING_MS,
    limitAtMs: dampSinceMs + DRYING_MS,
    lookedAtMs: [],
    acknowledgedAtMs: null,
    endedAtMs: null,
  };
}
