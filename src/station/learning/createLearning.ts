import { type Accessor, createEffect, createMemo, createSignal, on, onCleanup, untrack } from 'solid-js';
import type { WhatStrandsTaught } from '../../../shared/learning/teach';
import { inTurns } from '../../tablet/inTurns';
import type { StationInUse } from '../createStation';
import { isPastRead } from '../stationState';
import { askWorker, type LearnWorker } from './askWorker';
import { countDay, listOwnLessons } from './ownStrands';

/** What this station's own strands taught, as far as it is known. */
export type Taught =
  | { readonly kind: 'reckoning' | 'failed' | 'demo' }
  | { readonly kind: 'taught'; readonly what: WhatStrandsTaught };

export interface LearningInUse {
  readonly taught: Accessor<Taught>;
  /** Reckons it anew, of the strands that are there now. */
  readonly learnAgain: () => void;
}

/** The options stand as they are: the build reads them from the text. */
const startLearnWorker = (): LearnWorker =>
  new Worker(new URL('./learnWorker.ts', import.meta.url), { type: 'module' });

/**
 * What the strands of this station taught: reckoned from its logs at the start, at the first moment of each day and after
 * each erasing, and kept nowhere. No tap waits for it; where the worker fails, what is assumed is shown and a notice says
 * so. The demo teaches nothing. Lives as long as the reactive root that made it. Checked in
 * tests/src/station/createLearning.test.tsx.
 */
export function createLearning(
  station: Pick<StationInUse, 'state' | 'nowMs' | 'note'>,
  isDemo: boolean,
  startWorker: () => LearnWorker = startLearnWorker,
): LearningInUse {
  const [taught, setTaught] = createSignal<Taught>({ kind: isDemo ? 'demo' : 'reckoning' });
  const [asked, setAsked] = createSignal(0);
  let newest = 0;

  const reckon = async (): Promise<void> => {
    newest += 1;
    const mine = newest;
    const lessons = await inTurns(listOwnLessons(station.state(), station.nowMs()));
    const answer = await askWorker(startWorker, lessons);
    if (mine !== newest) return;
    setTaught(answer.ok ? { kind: 'taught', what: answer.value } : { kind: 'failed' });
    if (!answer.ok) station.note({ kind: 'notLearnt' });
  };

  /** Only of all that is kept: a few months alone would teach something else. */
  const isThere = createMemo(
    () => ['writing', 'watching'].includes(station.state().mode) && isPastRead(station.state()),
  );
  const day = createMemo(() => countDay(station.nowMs()));
  const erasings = createMemo(() => station.state().erasings.tombstones.length);
  createEffect(
    on([isThere, day, erasings, asked], () => {
      if (isThere() && !isDemo) void untrack(reckon);
    }),
  );
  onCleanup(() => {
    newest = Number.POSITIVE_INFINITY;
  });
  return { taught, learnAgain: () => setAsked(asked() + 1) };
}
