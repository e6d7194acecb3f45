import type { BrowserContext } from 'playwright-core';

/** One start of the station, in ms since the navigation began. */
export interface Start {
  /** Until every chair offers to start somebody, and the window writes. */
  readonly usableMs: number;
  /** Until all months were read. */
  readonly readMs: number;
  /** The longest piece in which the page could do nothing else, before and after it was usable. */
  readonly longestMs: number;
  readonly longestAfterMs: number;
  /** What the page holds as objects afterwards, in bytes. */
  readonly heapBytes: number;
}

interface Seen {
  usableMs: number;
  readMs: number;
  tasks: { startTime: number; duration: number }[];
}

/** Runs in the page before anything of the station. */
function watchStart(): void {
  const seen: Seen = { usableMs: 0, readMs: 0, tasks: [] };
  Object.assign(window, { seen });
  new PerformanceObserver((list) => {
    for (const { startTime, duration } of list.getEntries()) seen.tasks.push({ startTime, duration });
  }).observe({ type: 'longtask', buffered: true });
  const look = (): void => {
    const isThere = document.querySelector('main.bar [data-act=start-here]') !== null;
    const isReady = isThere && document.querySelector('[data-mode]') === null;
    if (isReady && seen.usableMs === 0) seen.usableMs = performance.now();
    if (isReady && document.querySelector('.station[data-past=read]') !== null) {
      seen.readMs = performance.now();
    } else requestAnimationFrame(look);
  };
  requestAnimationFrame(look);
}

/** Opens the station in a page of its own, and closes it when it is usable or, where that is wanted, when all is read. */
export async function measureStart(
  context: BrowserContext,
  address: string,
  isToTheEnd: boolean,
): Promise<Start> {
  const page = await context.newPage();
  try {
    await page.addInitScript(watchStart);
    await page.goto(address);
    await page.waitForFunction(
      (isWhole) => {
        const { usableMs, readMs } = (window as unknown as { seen: Seen }).seen;
        return (isWhole ? readMs : usableMs) > 0;
      },
      isToTheEnd,
      { timeout: 600_000 },
    );
    const { usableMs, readMs, tasks } = await page.evaluate(() => (window as unknown as { seen: Seen }).seen);
    const tools = await context.newCDPSession(page);
    await tools.send('Performance.enable');
    await tools.send('HeapProfiler.collectGarbage');
    const { metrics } = await tools.send('Performance.getMetrics');
    const longest = (from: number) =>
      Math.max(0, ...tasks.filter(({ startTime }) => startTime >= from).map(({ duration }) => duration));
    return {
      usableMs,
      readMs,
      longestMs: longest(0),
      longestAfterMs: longest(usableMs),
      heapBytes: metrics.find(({ name }) => name === 'JSHeapUsedSize')?.value ?? 0,
    };
  } finally {
    await page.close();
  }
}
