import { type Result, refuse } from '../../shared/result';
import type { CopyFailure, CopyFailureKind } from './copyFailure';
import type { JournalReply, JournalRequest } from './journalMessages';
import { waitAtMost } from './patience';

/** As much of a worker as the page needs. */
export interface JournalWorker {
  postMessage(request: JournalRequest): void;
  terminate(): void;
  onmessage: ((event: MessageEvent<JournalReply>) => void) | null;
  onmessageerror: ((event: MessageEvent) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
}

export interface WorkerLine {
  ask(method: JournalRequest['method'], args: readonly unknown[]): Promise<Result<unknown, CopyFailure>>;
  /** Ends the worker; whatever is unanswered is answered so. */
  end(kind: CopyFailureKind, detail: string): void;
}

type Settle = (answer: Result<unknown, CopyFailure>) => void;

/**
 * The page's side of a line to a worker. One that breaks, or is silent beyond the patience, is ended, and everything asked
 * of it is answered with that failure; the next call starts another. So no call hangs, and none is written behind the
 * caller's back after it was given up. Checked in tests/src/storage/journalClient.test.ts.
 */
export const makeWorkerLine = (startWorker: () => JournalWorker, patienceMs: number): WorkerLine => {
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

  return {
    end,

    ask: (method, args) => {
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
    },
  };
};
