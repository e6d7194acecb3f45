import { type Accessor, createSignal, onCleanup } from 'solid-js';

/**
 * What time is it? One ticker for the whole station, in milliseconds since 1970-01-01 UTC.
 * Armed to the next full second, and woken by visibility, focus and page show, so that a page that slept is right
 * at once. `refresh` is called whenever a state is published, so that no first paint is a second behind.
 */
export function createTicker(readNow: () => number = Date.now): {
  readonly nowMs: Accessor<number>;
  readonly refresh: () => void;
} {
  const [nowMs, setNowMs] = createSignal(readNow());
  let timer: ReturnType<typeof setTimeout> | undefined;

  const refresh = (): void => {
    clearTimeout(timer);
    const atMs = readNow();
    setNowMs(atMs);
    timer = setTimeout(refresh, 1000 - (atMs % 1000));
  };

  refresh();
  document.addEventListener('visibilitychange', refresh);
  window.addEventListener('focus', refresh);
  window.addEventListener('pageshow', refresh);
  onCleanup(() => {
    clearTimeout(timer);
    document.removeEventListener('visibilitychange', refresh);
    window.removeEventListener('focus', refresh);
    window.removeEventListener('pageshow', refresh);
  });
  return { nowMs, refresh };
}
