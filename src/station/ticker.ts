import { type Accessor, createSignal, onCleanup } from 'solid-js';
import { type ClockJump, findJump } from '../../shared/records/clockJump';

/** A clock that runs faster is looked at no more often than so, ms. Assumed because ten times a second is smooth, and a tablet on a wall has time for it. */
const ASSUMED_FAST_TICK_MS = 100;

/** How long until the next full second, ms on the tablet's clock? */
const findWaitMs = (atMs: number, times: number): number =>
  Math.max((1000 - (atMs % 1000)) / times, times === 1 ? 0 : ASSUMED_FAST_TICK_MS);

/**
 * What time is it? One ticker for the whole station, in milliseconds since 1970-01-01 UTC.
 * Armed to the next full second, and woken by visibility, focus and page show, so that a page that slept is right
 * at once. `refresh` is called whenever a state is published, so that no first paint is a second behind.
 */
export function createTicker({
  readNow = Date.now,
  readSteady = () => performance.now(),
  readTimes = () => 1,
  onJump = () => undefined,
}: {
  readonly readNow?: () => number;
  /** A clock that nobody sets, in ms from any beginning. */
  readonly readSteady?: () => number;
  /** So many times as fast as the tablet's clock does `readNow` run: it is looked at so much more often. */
  readonly readTimes?: () => number;
  /** The clock is further on than the steady one counted: it slept, or was put ahead. */
  readonly onJump?: (jump: ClockJump) => void;
} = {}): {
  readonly nowMs: Accessor<number>;
  readonly refresh: () => void;
  /** The latest time the tablet's clock has shown since this page was opened: ahead of now when it was set back. */
  readonly seenMs: Accessor<number>;
  /** A person said that the clock is right as it is now. */
  readonly trustNow: () => void;
} {
  const [nowMs, setNowMs] = createSignal(readNow());
  const [seenMs, setSeenMs] = createSignal(nowMs());
  let timer: ReturnType<typeof setTimeout> | undefined;
  let last = { wallMs: nowMs(), steadyMs: readSteady() };

  const refresh = (): void => {
    clearTimeout(timer);
    const atMs = readNow();
    const both = { wallMs: atMs, steadyMs: readSteady() };
    const jump = findJump(last, both);
    last = both;
    setNowMs(atMs);
    setSeenMs((seen) => Math.max(seen, atMs));
    timer = setTimeout(refresh, findWaitMs(atMs, readTimes()));
    if (jump !== null) onJump(jump);
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
  return { nowMs, refresh, seenMs, trustNow: () => setSeenMs(readNow()) };
}
