import { accept, type Result, refuse } from '../../shared/result';
import type { CopyName } from './asideNote';

/** Why a copy could not be read or written. */
export type CopyFailureKind =
  /** IndexedDB will not open, or failed. */
  | 'indexUnavailable'
  /** The file system, or the worker that keeps it, will not answer or failed. */
  | 'journalUnavailable'
  /** The browser gives no more room. */
  | 'quotaExceeded'
  /** Another window or worker holds the file. */
  | 'lockedElsewhere'
  /** No answer within the patience; whether it was written is not known. */
  | 'timedOut';

export interface CopyFailure {
  readonly copy: CopyName;
  readonly kind: CopyFailureKind;
  /** What the browser said; for a log, not for the screen. */
  readonly detail: string;
}

const kindByName: ReadonlyMap<string, CopyFailureKind> = new Map([
  ['QuotaExceededError', 'quotaExceeded'],
  ['NoModificationAllowedError', 'lockedElsewhere'],
]);

/** What is this error of the browser, in the store's words? */
export const nameFailure = (copy: CopyName, error: unknown): CopyFailure => {
  const { name, message } = readError(error);
  const kind = kindByName.get(name) ?? (copy === 'journal' ? 'journalUnavailable' : 'indexUnavailable');
  return { copy, kind, detail: `${name}: ${message}` };
};

const readError = (error: unknown): { readonly name: string; readonly message: string } => {
  if (typeof error !== 'object' || error === null) return { name: 'Error', message: String(error) };
  const name = 'name' in error ? String(error.name) : 'Error';
  return { name, message: 'message' in error ? String(error.message) : '' };
};

/** Does the work; an error of the browser becomes a named failure. */
export const attempt = async <T>(copy: CopyName, work: () => Promise<T>): Promise<Result<T, CopyFailure>> => {
  try {
    return accept(await work());
  } catch (error) {
    return refuse(nameFailure(copy, error));
  }
};
