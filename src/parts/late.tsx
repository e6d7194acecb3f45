import { type Component, createSignal, onCleanup, onMount, Show } from 'solid-js';
import { useWords } from './useWords';

/** ms between two tries to fetch a part that did not come. Assumed because a network is seldom back sooner. */
export const ASSUMED_FETCH_AGAIN_MS = 3000;

const loaders: (() => Promise<unknown>)[] = [];

/**
 * A component whose script is fetched after the first screen stands: at once where it is asked for, else by
 * `loadLateParts`. Once it is there it renders as if it had always been. Until then a line says that it is coming;
 * where it does not come it is asked for again every `ASSUMED_FETCH_AGAIN_MS`.
 */
export function late<P extends object>(load: () => Promise<Component<P>>): Component<P> {
  let here: Component<P> | null = null;
  let coming: Promise<void> | null = null;
  const fetchOnce = () => {
    coming ??= load().then(
      (part) => {
        here = part;
      },
      (error: unknown) => {
        coming = null;
        throw error;
      },
    );
    return coming;
  };
  loaders.push(fetchOnce);

  return function Late(props: P) {
    if (here !== null) return here(props);
    const [part, setPart] = createSignal<Component<P> | null>(null);
    let isGone = false;
    let again: ReturnType<typeof setTimeout> | undefined;
    const ask = () => {
      fetchOnce().then(
        () => {
          if (!isGone) setPart(() => here);
        },
        () => {
          if (!isGone) again = setTimeout(ask, ASSUMED_FETCH_AGAIN_MS);
        },
      );
    };
    onMount(ask);
    onCleanup(() => {
      isGone = true;
      clearTimeout(again);
    });
    return (
      <Show when={part()} keyed fallback={<StillComing />}>
        {(come) => come(props)}
      </Show>
    );
  };
}

/** Fetches every part that comes late, one after the other; one that does not come is left to whoever opens it. */
export async function loadLateParts(): Promise<void> {
  for (const load of loaders) await load().catch(() => undefined);
}

function StillComing() {
  const words = useWords();
  return (
    <p class="still-coming" role="status">
      {words.general.stillComing}
    </p>
  );
}
