import type { Result } from '../../shared/result';
import type { AsideNote, AsideReason } from './asideNote';
import type { CopyFailure } from './copyFailure';
import type { CopyReading } from './copyReading';
import type { LeavingMark } from './leavingMark';

/** The answer of a copy: what was asked for, or why not. A copy never throws and never hangs. */
export type Answer<T> = Promise<Result<T, CopyFailure>>;

/**
 * Everything a copy holds. `strangers` are files or keys that name no log; they are left as they are. `later` are logs of
 * which only the name was read.
 */
export interface CopyContents {
  readonly readings: ReadonlyMap<string, Result<CopyReading, CopyFailure>>;
  readonly later: readonly string[];
  readonly strangers: readonly string[];
}

/** What both copies can do. Everything but `append` may be done twice with the same outcome. */
export interface LogCopy {
  /** `later`: how names begin of which only the name is read now; null: everything is read. */
  readAll(later: string | null): Answer<CopyContents>;
  /** null: it holds nothing of this log. */
  read(name: string): Answer<CopyReading | null>;
  /** Writes lines, the first of which has place `from`, behind what is there; answers when they are safe. */
  append(name: string, from: number, lines: readonly string[]): Answer<void>;
  /** Moves all it holds of a log aside, untouched; null when it holds nothing. */
  setAside(name: string, reason: AsideReason): Answer<AsideNote | null>;
  remove(name: string): Answer<void>;
  /** Holds these lines of a log, from place 0 on, and nothing else of it: what was there is gone, kept nowhere. */
  exchange(name: string, lines: readonly string[]): Answer<void>;
  listAside(): Answer<readonly AsideNote[]>;
  /** Lets go of every handle; the next call opens them again. */
  close(): Answer<void>;
}

/** What a log is about to be in both copies; null: the power failed while that was written down, so it stays as it is. */
export interface Rewrite {
  readonly name: string;
  readonly lines: readonly string[] | null;
}

/**
 * The journal also cuts torn tails, and keeps the marks of logs that are on their way out of both copies and what logs
 * are about to be.
 */
export interface JournalCopy extends LogCopy {
  /** Keeps the bytes after the last good line aside, then cuts them; null when there are none. */
  cutTail(name: string): Answer<AsideNote | null>;
  listMarks(): Answer<readonly LeavingMark[]>;
  mark(mark: LeavingMark): Answer<void>;
  unmark(mark: LeavingMark): Answer<void>;
  listRewrites(): Answer<readonly Rewrite[]>;
  /** Writes down, whole and apart, what a log is about to be. */
  prepare(name: string, lines: readonly string[]): Answer<void>;
  /** There is nothing to be rewritten any more. */
  forget(name: string): Answer<void>;
}

/** The index can exchange all it holds of a log for other lines in one step. */
export interface IndexCopy extends LogCopy {
  /** `known`: lines of this log, from place 0 on, that were found good in the journal. */
  read(name: string, known?: readonly string[]): Answer<CopyReading | null>;
  /** Moves what is there aside and writes these lines from place 0 on: both or neither. */
  replace(name: string, reason: AsideReason, lines: readonly string[]): Answer<AsideNote | null>;
}

/** The two of them. */
export interface Copies {
  readonly journal: JournalCopy;
  readonly index: IndexCopy;
}
