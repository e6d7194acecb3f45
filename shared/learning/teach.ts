import { priorMeans } from '../judgement/chance/prior';
import { accept, type Result } from '../result';
import { holdBack, type Learnt, learn } from './learnt';
import { addUp, type Lesson, toShare } from './posterior';

/** A lesson, and on which day of this salon its outcome was known: a number that rises with the days. */
export interface DatedLesson extends Lesson {
  readonly day: number;
}

/** What was to be said of one strand before it: by what is assumed, and by all strands of the days before. */
export interface Foreseen {
  readonly assumed: number;
  readonly learnt: number;
  readonly hasBroken: boolean;
}

/** What this station's strands taught, and how well they would have been foreseen. */
export interface WhatStrandsTaught {
  readonly learnt: Learnt;
  /** The newest of them, the oldest first. */
  readonly foreseen: readonly Foreseen[];
}

/**
 * So many of the newest strands are looked back at. Assumed because each of their days is fitted anew, which a tablet does
 * for a thousand in seconds, and because a salon is asked how well it foresees now.
 */
export const ASSUMED_STRANDS_LOOKED_BACK = 1000;

/**
 * What do these strands, in the order in which they were known, teach; and how well would each of the newest have been
 * foreseen on its morning?
 * Walked forward day by day: what is said of a strand comes from the days before it alone, never from itself or from
 * what came later. Refused where a fit comes to no end. Checked in tests/shared/learning/teach.test.ts.
 */
export function teach(
  lessons: readonly DatedLesson[],
  lookBack = ASSUMED_STRANDS_LOOKED_BACK,
): Result<WhatStrandsTaught, 'noFit'> {
  const foreseen: Foreseen[] = [];
  let from = priorMeans;
  let at = Math.max(0, lessons.length - lookBack);
  while (at < lessons.length) {
    const day = lessons[at]?.day;
    const dayBegan = lessons.findIndex((lesson) => lesson.day === day);
    const morning = learn(lessons.slice(0, dayBegan), from);
    if (!morning.ok) return morning;
    from = morning.value.coefficients.means;
    for (; at < lessons.length && lessons[at]?.day === day; at += 1) {
      const { x = [], hasBroken = false } = lessons[at] ?? {};
      const assumed = toShare(addUp(x, priorMeans));
      const learnt = holdBack(assumed, toShare(addUp(x, from)), morning.value.strands);
      foreseen.push({ assumed, learnt, hasBroken });
    }
  }
  const now = learn(lessons, from);
  return now.ok ? accept({ learnt: now.value, foreseen }) : now;
}
