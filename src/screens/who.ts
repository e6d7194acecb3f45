import { type Accessor, createSignal } from 'solid-js';

/** What waits until somebody has said who she is, and what happens when nobody does. */
interface Waiting {
  readonly goOn: () => void;
  readonly giveUp: () => void;
}

const ignore = (): void => undefined;

/** Who is at the tablet, kept in memory only, and the asking for it. */
export interface Who {
  /** Empty while nobody is chosen. */
  readonly by: Accessor<string>;
  readonly isAsked: Accessor<boolean>;
  readonly ask: () => void;
  readonly choose: (name: string) => void;
  readonly chooseNobody: () => void;
  /** Goes on at once when somebody is chosen, else as soon as she has said who she is. */
  readonly asSomebody: (goOn: () => void, giveUp?: () => void) => void;
}

/**
 * What came of it, once whoever is at the tablet has said who she is. Where nobody says it goes on all the same, and
 * whoever judges it refuses a tap in nobody's name; `giveUp` where something else is to come of that.
 */
export const goAsSomebody = <T>(
  { asSomebody }: Pick<Who, 'asSomebody'>,
  go: () => T | Promise<T>,
  giveUp: () => T | Promise<T> = go,
): Promise<T> =>
  new Promise((resolve) => {
    asSomebody(
      () => resolve(go()),
      () => resolve(giveUp()),
    );
  });

/** Who is at the tablet? `mayWrite`: a window that only watches needs no name. */
export function createWho(mayWrite: () => boolean): Who {
  const [by, setBy] = createSignal('');
  const [waiting, setWaiting] = createSignal<Waiting | null>(null);
  const end = (): Waiting | null => {
    const ended = waiting();
    setWaiting(null);
    return ended;
  };
  return {
    by,
    isAsked: () => waiting() !== null,
    ask: () => setWaiting({ goOn: ignore, giveUp: ignore }),
    choose: (name) => {
      setBy(name);
      end()?.goOn();
    },
    chooseNobody: () => end()?.giveUp(),
    asSomebody: (goOn, giveUp = ignore) => {
      if (by() !== '' || !mayWrite()) return goOn();
      // What waited before gives up, so that nothing waits for ever.
      waiting()?.giveUp();
      setWaiting({ goOn, giveUp });
    },
  };
}
