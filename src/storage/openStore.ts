import { type Edition, places } from './edition';
import { makeIndexCopy } from './indexCopy';
import { makeJournalClient } from './journalClient';
import { makeStore } from './makeStore';
import { makePastClient } from './pastClient';
import type { Store } from './store';
import { makeStrictStore } from './strictStore';

/** The options stand as they are: the build reads them from the text. The worker knows its edition by its name. */
function startWorker(edition: Edition): Worker {
  switch (edition) {
    case 'demo':
      return new Worker(new URL('./worker/journalWorker.ts', import.meta.url), {
        type: 'module',
        name: 'demo',
      });
    case 'practice':
      return new Worker(new URL('./worker/journalWorker.ts', import.meta.url), {
        type: 'module',
        name: 'practice',
      });
    case 'salon':
      return new Worker(new URL('./worker/journalWorker.ts', import.meta.url), { type: 'module' });
  }
}

/**
 * The store of this browser: the journal in a worker, the index in IndexedDB. Nothing is opened before `restore`.
 * One window at a time: ask for the writer's place first (writerLock.ts).
 */
export const openStore = (edition: Edition): Store =>
  makeStore(
    {
      journal: makeJournalClient(() => startWorker(edition)),
      index: makeIndexCopy(makeStrictStore(indexedDB, places[edition].database, 'lines')),
    },
    makePastClient(() => startWorker(edition)),
  );
