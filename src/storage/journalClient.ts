import type { JournalCopy } from './copies';
import { ASSUMED_PATIENCE_MS } from './patience';
import { type JournalWorker, makeWorkerLine } from './workerLine';

/** The page's side of the line to the journal: the same calls, answered by the worker. Checked in tests/src/storage/journalClient.test.ts. */
export const makeJournalClient = (
  startWorker: () => JournalWorker,
  patienceMs: number = ASSUMED_PATIENCE_MS,
): JournalCopy => {
  const { ask, end } = makeWorkerLine(startWorker, patienceMs);

  const call = <M extends keyof JournalCopy>(method: M): JournalCopy[M] =>
    ((...args: readonly unknown[]) => ask(method, args)) as JournalCopy[M];

  return {
    readAll: call('readAll'),
    read: call('read'),
    append: call('append'),
    setAside: call('setAside'),
    remove: call('remove'),
    exchange: call('exchange'),
    listAside: call('listAside'),
    cutTail: call('cutTail'),
    listMarks: call('listMarks'),
    mark: call('mark'),
    unmark: call('unmark'),
    listRewrites: call('listRewrites'),
    prepare: call('prepare'),
    forget: call('forget'),
    close: async () => {
      const answer = await (ask('close', []) as ReturnType<JournalCopy['close']>);
      end('journalUnavailable', 'the journal was closed');
      return answer;
    },
  };
};
