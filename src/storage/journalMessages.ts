import type { Result } from '../../shared/result';
import type { JournalCopy } from './copies';
import type { CopyFailure } from './copyFailure';
import type { ReadPast } from './readPast';

/** What a worker does: all that the journal does, and reading what was let wait. */
export type Served = JournalCopy & { readonly readPast?: ReadPast };

/** What the page asks of the worker. */
export interface JournalRequest {
  readonly id: number;
  readonly method: keyof Served;
  readonly args: readonly unknown[];
}

/** What the worker answers, under the number of the request. */
export interface JournalReply {
  readonly id: number;
  readonly answer: Result<unknown, CopyFailure>;
}
