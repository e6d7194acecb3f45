import type { PastReader, ReadPast } from './readPast';
import { type JournalWorker, makeWorkerLine } from './workerLine';

/** How long a month may take to be read, ms. Assumed because the largest seen took a few seconds of a busy tablet. */
export const ASSUMED_PAST_PATIENCE_MS = 60_000;

/**
 * Reads logs that were let wait in a worker of their own, so that neither the page nor the journal waits for them. The
 * worker lives as long as there is something to read.
 */
export const makePastClient = (
  startWorker: () => JournalWorker,
  patienceMs: number = ASSUMED_PAST_PATIENCE_MS,
): PastReader => {
  const { ask, end } = makeWorkerLine(startWorker, patienceMs);
  return {
    read: ((name) => ask('readPast', [name])) as ReadPast,
    close: () => end('journalUnavailable', 'everything was read'),
  };
};
