import { type Result, refuse } from '../../shared/result';
import type { JournalCopy } from './copies';
import type { CopyFailure, CopyFailureKind } from './copyFailure';
import type { JournalReply, JournalRequest } from './journalMessages';
import { ASSUMED_PATIENCE_MS, waitAtMost } from './patience';

/** As much of a worker as the page needs. */
export interface JournalWorker {
  postMessage(request: JournalRequest): void;
  terminate(): void;
  onmessage: ((event: MessageEvent<JournalReply>) => void) | null;
  onmessageerror: ((event: MessageEvent) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
}

type Settle = (answer: Result<unknown, CopyFailure>) => void;

/**
 * The page's side of the line to the journal: the same calls, answered by the worker.
 * A worker that breaks, or is silent beyond the patience, is ended, and everything asked of it is answered with
 * that failure; the next call starts another. So no call hangs, and none is written behind the caller's back
 * after it was given up. Checked in tests/src/storage/journalClient.test.ts.
 */
export const makeJournalClient = (
  startWorker: () => JournalWorker,
  patienceMs: number = ASSUMED_PATIENCE_MS,
): JournalCopy => {
  const waiting = new Map<number, Settle>();
  let worker: JournalWorker | null = null;
  let lastId = 0;

  const end = (kind: CopyFailureKind, detail: string): void => {
    worker?.terminate();
    worker = null;
    const unanswered = [...waiting.values()];
    waiting.clear();
    for (const settle of unanswered) settle(refuse({ copy: 'journal', kind, detail }));
  };

  const start = (): JournalWorker => {
    const started = startWorker();
    const endIfCurrent = (detail: string): void => {
      if (worker === started) end('journalUnavailable', detail);
    };
    started.onmessage = ({ data }) => {
      waiting.get(data.id)?.(data.answer);
      waiting.delete(data.id);
    };
    started.onmessageerror = () => endIfCurrent('an answer could not be read');
    started.onerror = (event) => endIfCurrent(event.message || 'the worker broke off or did not load');
    return started;
  };

  const post = (
    method: keyof JournalCopy,
    args: readonly unknown[],
  ): Promise<Result<unknown, CopyFailure>> => {
    const id = ++lastId;
    const answered = new Promise<Result<unknown, CopyFailure>>((settle) => {
      waiting.set(id, settle);
      try {
        worker ??= start();
        worker.postMessage({ id, method, args });
      } catch (error) {
        end('journalUnavailable', String(error));
      }
    });
    return waitAtMost(answered, patienceMs, () => {
      const detail = `no answer to ${method} within ${patienceMs} ms`;
      end('timedOut', detail);
      return refuse({ copy: 'journal', kind: 'timedOut', detail });
    });
  };

  const call = <M extends keyof JournalCopy>(method: M): JournalCopy[M] =>
    ((...args: readonly unknown[]) => post(method, args)) as JournalCopy[M];

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
      const answer = await (post('close', []) as ReturnType<JournalCopy['close']>);
      end('journalUnavailable', 'the journal was closed');
      return answer;
    },
  };
};
