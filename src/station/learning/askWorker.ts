import type { DatedLesson, WhatStrandsTaught } from '../../../shared/learning/teach';
import { type Result, refuse } from '../../../shared/result';
import { waitAtMost } from '../../storage/patience';

/** As much of a worker as learning needs: lessons in, what they teach out. */
export interface LearnWorker {
  postMessage(lessons: readonly DatedLesson[]): void;
  terminate(): void;
  onmessage: ((event: MessageEvent<TeachAnswer>) => void) | null;
  onmessageerror: ((event: MessageEvent) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
}

/** What the strands taught, or why nobody can say: no fit, no worker, or none that answered in time. */
export type TeachAnswer = Result<WhatStrandsTaught, 'noFit' | 'noWorker'>;

/** So long a worker may reckon, ms. Assumed because ten years of strands take a slow tablet less, and nobody waits for it. */
export const ASSUMED_LEARNING_MS = 300_000;

/**
 * What do these strands teach? Asked of a worker that lives for this one answer, so that whatever breaks in it or never
 * comes back breaks nothing here. Checked in tests/src/station/askWorker.test.ts.
 */
export async function askWorker(
  startWorker: () => LearnWorker,
  lessons: readonly DatedLesson[],
  patienceMs: number = ASSUMED_LEARNING_MS,
): Promise<TeachAnswer> {
  let worker: LearnWorker | null = null;
  try {
    const started = startWorker();
    worker = started;
    const answered = new Promise<TeachAnswer>((settle) => {
      started.onmessage = ({ data }) => settle(data);
      started.onmessageerror = () => settle(refuse('noWorker'));
      started.onerror = () => settle(refuse('noWorker'));
      started.postMessage(lessons);
    });
    return await waitAtMost(answered, patienceMs, () => refuse('noWorker'));
  } catch {
    return refuse('noWorker');
  } finally {
    worker?.terminate();
  }
}
