import { type Component, createSignal, onCleanup, onMount, Show } from 'solid-js';
import { useWords } from './useWords';

/** ms between two tries to fetch a part that did not come. Assumed because a network is seldom back sooner. */
export const ASSUMED_FETCH_AGAIN_MS = 3000;

const loaders: (() => Promise<unknown>)[] = [];

/**
 * A component whose script is fetched after the first screen stands: at once where it is asked for, else by
 * `loadLateParts`. Once it is there it renders as if it had always been. Until then a line says that it is coming;
 * where it does not come it is asked for again every `ASSUMED_FETCH_AGAIN_MS`, and from the second time on the page can
 * be loaded anew. Checked in tests/src/parts/late.test.tsx.
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
    const [failed, setFailed] = createSignal(0);
    let isGone = false;
    let again: ReturnType<typeof setTimeout> | undefined;
    const ask = () => {
      fetchOnce().then(
        () => {
          if (!isGone) setPart(() => here);
        },
        () => {
          if (isGone) return;
          setFailed((times) => times + 1);
          again = setTimeout(ask, ASSUMED_FETCH_AGAIN_MS);
        },
      );
    };
    onMount(ask);
    onCleanup(() => {
      isGone = true;
      clearTimeout(again);
    });
    return (
      <Show when={part()} keyed fallback={<StillComing mayLoadAnew={failed() > 1} />}>
        {(come) => come(props)}
      </Show>
    );
  };
}

/** Fetches every part that comes late, one after the other; one that does not come is left to whoever opens it. */
export async function loadLateParts(): Promise<void> {
  for (const load of loaders) await load().catch(() => undefined);
}

/** A browser may keep to itself that a script did not come once (html#6768): then only the page loaded anew fetches it. */
function StillComing(props: { readonly mayLoadAnew: boolean }) {
  const words = useWords();
  return (
    <div class="still-coming">
      <p role="status">{words.general.stillComing}</p>
      <Show when={props.mayLoadAnew}>
        <button type="button" class="big-button" data-act="load-anew" onClick={() => location.reload()}>
          {words.general.loadAnew}
        </button>
      </Show>
    </div>
  );
}
