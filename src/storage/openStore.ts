import { makeIndexCopy } from './indexCopy';
import { makeJournalClient } from './journalClient';
import { makeStore } from './makeStore';
import type { Store } from './store';
import { makeStrictStore } from './strictStore';

/**
 * The store of this browser: the journal in a worker, the index in IndexedDB. Nothing is opened before `restore`.
 * One window at a time: ask for the writer's place first (writerLock.ts).
 */
export const openStore = (): Store =>
  makeStore({
    journal: makeJournalClient(
      () => new Worker(new URL('./worker/journalWorker.ts', import.meta.url), { type: 'module' }),
    ),
    index: makeIndexCopy(makeStrictStore(indexedDB, 'strandproof', 'lines')),
  });
