import { type Accessor, createEffect, createSignal, on, onCleanup } from 'solid-js';

/** No longer than this at a stretch, ms: fingers are answered in between. Assumed because a frame has about 16. */
export const ASSUMED_STRETCH_MS = 12;

/** What was asked, and all that came of it. */
export interface Reckoned<Asked, One> {
  readonly asked: Asked;
  readonly all: readonly One[];
}

/**
 * Reckons one after the other without holding up the page, and anew when something else is asked. What was reckoned last
 * stands until the next is whole; null before the first. `readMs` tells how long a stretch has taken.
 * Checked in tests/src/screens/practice/press/createInPieces.test.tsx.
 */
export function createInPieces<Asked, One>(
  asked: Accessor<Asked>,
  reckon: (asked: Asked) => Iterator<One, void>,
  readMs: () => number = () => performance.now(),
): Accessor<Reckoned<Asked, One> | null> {
  const [reckoned, setReckoned] = createSignal<Reckoned<Asked, One> | null>(null);
  createEffect(
    on(asked, (now) => {
      const steps = reckon(now);
      const all: One[] = [];
      let timer: ReturnType<typeof setTimeout> | undefined;
      const go = () => {
        const beganMs = readMs();
        for (let next = steps.next(); next.done !== true; next = steps.next()) {
          all.push(next.value);
          if (readMs() - beganMs >= ASSUMED_STRETCH_MS) {
            timer = setTimeout(go, 0);
            return;
          }
        }
        setReckoned({ asked: now, all });
      };
      go();
      onCleanup(() => clearTimeout(timer));
    }),
  );
  return reckoned;
}
