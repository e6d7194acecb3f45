/** How long a copy may take to answer, ms. Assumed because a healthy one answers in a few, a full restore in hundreds. */
export const ASSUMED_PATIENCE_MS = 10_000;

/**
 * Will this ever answer?
 * Waits for the work, at most about `patienceMs`; then answers `onLate()` instead. The wait is two halves, so that
 * a page that slept and wakes first hears what arrived meanwhile before it gives up.
 * Checked in tests/src/storage/patience.test.ts.
 */
export const waitAtMost = <T>(work: Promise<T>, patienceMs: number, onLate: () => T): Promise<T> =>
  new Promise((resolve, reject) => {
    const giveUp = (): void => resolve(onLate());
    let timer = setTimeout(() => {
      timer = setTimeout(giveUp, patienceMs / 2);
    }, patienceMs / 2);
    work.then(resolve, reject).finally(() => clearTimeout(timer));
  });
