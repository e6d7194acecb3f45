import type { Result } from '../../shared/result';
import type { AsideNote, CallerReason, CopyName } from './asideNote';
import type { CopyFailureKind } from './copyFailure';
import type { Json } from './json';
import type { MendedNote } from './reconcile';

/** A copy that could not be reached, wholly (`name` null) or for one log; nothing was changed there. */
export interface CopyTrouble {
  readonly copy: CopyName;
  readonly kind: CopyFailureKind;
  readonly name: string | null;
  readonly detail: string;
}

/**
 * Something that is not among the logs and was left where it is: a damaged log whose other copy cannot be reached
 * just now, or a file or key that names no log (`badName`).
 */
export interface UnreadNote {
  readonly name: string;
  readonly copy: CopyName;
  readonly reason: 'badLine' | 'gap' | 'repeat' | 'badName';
}

export interface Restored {
  /** Every log that has at least one entry. */
  readonly logs: ReadonlyMap<string, readonly Json[]>;
  /** Logs of which only the name was read, in the order of their names: each takes nothing until `readPast`. */
  readonly later: readonly string[];
  /** What was set aside this time; `listAside` has those of all starts. */
  readonly aside: readonly AsideNote[];
  readonly mended: readonly MendedNote[];
  /** Not empty: the logs named (all, where no name is given) take no entry until they have been reloaded. */
  readonly troubles: readonly CopyTrouble[];
  readonly unread: readonly UnreadNote[];
}

/** The same for one log; no entries when there is no such log. */
export interface Reloaded extends Omit<Restored, 'logs' | 'later'> {
  readonly entries: readonly Json[];
}

/** Why something was not done. */
export interface WriteFailure {
  readonly name: string;
  /** Beyond those of the copies: asked before the store was restored (or after it was released), or of a log that is
   * still to be read; a place other than the next one; a name that is none; an entry that JSON would change. */
  readonly kind: CopyFailureKind | 'notRestored' | 'wrongSeq' | 'badName' | 'notJson';
  /** null: refused before either copy was asked. */
  readonly copy: CopyName | null;
  /** true: one copy may have it all the same; `reload` says what is held. */
  readonly mayBeHeld: boolean;
  readonly detail: string;
}

/**
 * Two copies of named logs that grow, and are never changed but by `rewrite`. It knows nothing of what the entries mean.
 * Every refusal is a value. After a failure of a copy the log takes nothing more, and answers with that same
 * failure, until it has been reloaded. Checked in tests/src/storage/store*.test.ts.
 */
export interface Store {
  /**
   * Reads both copies, mends what is missing or behind from the other one, and says what it did. `later`: how the names of
   * logs begin that are not read now. What was on its way out of both copies, or being rewritten, is finished all the same.
   */
  restore(later?: string | null): Promise<Restored>;
  /**
   * Reads one log that was let wait, mends it, and says what is held; or reads it again. Its entries are kept as text, and
   * what is a list in them is read anew each time somebody asks for it. Refused when neither copy answers.
   */
  readPast(name: string): Promise<Result<Reloaded, WriteFailure>>;
  /**
   * Appends to both copies; ok only when both are done. `seq` is the number of entries the log has so far. Of several in one
   * go some may be held when it is broken off: from the first on, each of them whole.
   */
  append(name: string, seq: number, ...entries: readonly Json[]): Promise<Result<void, WriteFailure>>;
  /** Removes a log from both copies; may be done twice. Once begun, the next reload or restore finishes it. */
  remove(name: string): Promise<Result<void, WriteFailure>>;
  /**
   * Makes a log be these entries in both copies, from place 0 on, and leaves nothing of those before: the one way in
   * which a log ever loses something and stays. Broken off, it is wholly the old one or wholly this one.
   */
  rewrite(name: string, entries: readonly Json[]): Promise<Result<void, WriteFailure>>;
  /** Moves a log that the caller could not accept aside in both copies, untouched and named; finished likewise. */
  setAside(name: string, why: CallerReason): Promise<Result<readonly AsideNote[], WriteFailure>>;
  /** Reads one log again after a failure, mends it, and says what is held now. Refused when neither copy answers. */
  reload(name: string): Promise<Result<Reloaded, WriteFailure>>;
  /** What has been set aside so far, over all starts, in the copies that answer. */
  listAside(): Promise<readonly AsideNote[]>;
  /** Closes every handle, after what is queued is done. Takes nothing more until it is restored again. */
  release(): Promise<void>;
}
