import type { Result } from '../../shared/result';
import type { JournalCopy } from './copies';
import type { CopyFailure } from './copyFailure';

/** What the page asks of the worker. */
export interface JournalRequest {
  readonly id: number;
  readonly method: keyof JournalCopy;
  readonly args: readonly unknown[];
}

/** What the worker answers, under the number of the request. */
export interface JournalReply {
  readonly id: number;
  readonly answer: Result<unknown, CopyFailure>;
}
