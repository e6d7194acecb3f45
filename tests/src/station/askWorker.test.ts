import { describe, expect, it } from 'vitest';
import { type DatedLesson, teach } from '../../../shared/learning/teach';
import { askWorker, type LearnWorker } from '../../../src/station/learning/askWorker';

const lessons: readonly DatedLesson[] = [{ x: [1, ...Array(13).fill(0.5)], hasBroken: true, day: 3 }];
const failed = { ok: false, error: 'noWorker' };

/** A worker that does this with what it is asked, and remembers whether it was ended. */
function makeWorker(onAsked: (worker: LearnWorker, asked: readonly DatedLesson[]) => void) {
  const ended: string[] = [];
  const worker: LearnWorker = {
    onmessage: null,
    onmessageerror: null,
    onerror: null,
    terminate: () => ended.push('ended'),
    postMessage: (asked) => onAsked(worker, asked),
  };
  return { worker, ended };
}

describe('the worker that is asked what strands taught', () => {
  it('answers what the fit answers, and is ended', async () => {
    const { worker, ended } = makeWorker((self, asked) => {
      self.onmessage?.({ data: structuredClone(teach(asked)) } as MessageEvent);
    });
    expect(await askWorker(() => worker, lessons)).toEqual(teach(lessons));
    expect(ended).toEqual(['ended']);
  });

  it.each<[string, (worker: LearnWorker) => void]>([
    ['breaks off', (worker) => worker.onerror?.({} as ErrorEvent)],
    ['answers what cannot be read', (worker) => worker.onmessageerror?.({} as MessageEvent)],
    ['never answers', () => undefined],
    [
      'cannot be asked',
      () => {
        throw new Error('no clone');
      },
    ],
  ])('that %s is a refusal, and is ended', async (_, onAsked) => {
    const { worker, ended } = makeWorker(onAsked);
    expect(await askWorker(() => worker, lessons, 20)).toEqual(failed);
    expect(ended).toEqual(['ended']);
  });

  it('that cannot be started is a refusal', async () => {
    const start = (): LearnWorker => {
      throw new Error('refused by policy');
    };
    expect(await askWorker(start, lessons)).toEqual(failed);
  });
});
