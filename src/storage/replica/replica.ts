import type { NewerDocument, RecordDocument } from '../../../shared/records/documents/document';
import type { Result } from '../../../shared/result';

/** A document that is not taken up or not kept there, by its name, and why. */
export interface RefusedDocument {
  readonly id: string;
  /**
   * `foreign`: its name is none of a record. `damaged`: its content is not what its name says. `newer`: of a newer edition.
   * `tooLarge`: alone more than is taken at one go. `otherContent`: ours is named like another one there. `notKept`: the
   * other side did not take ours. `notJudged`: whole, but no record, by the judge of this station.
   */
  readonly why: 'foreign' | 'damaged' | 'newer' | 'tooLarge' | 'otherContent' | 'notKept' | 'notJudged';
}

/**
 * A document that is looked at again each time. `openHere`: an erasing that somebody who is open is in the way of.
 * `fromLater`: its moments lie more than a day after this tablet's clock.
 */
export interface LaterDocument {
  readonly id: string;
  readonly why: 'openHere' | 'fromLater';
}

/** What this station holds, and how something comes in: all that a replica has to know of it. */
export interface Here {
  /** The names of all documents that are here now. To name them takes a while: rejects once it is told to stop. */
  readIds(stop?: AbortSignal): Promise<ReadonlySet<string>>;
  /** These documents, as far as they are still here. */
  read(ids: readonly string[]): readonly RecordDocument[];
  /** Was the record of this id erased here, or is it about to be? It neither comes nor goes. */
  isErased(recordId: string): boolean;
  /** Did another house erase the record of this id for its age? It may come, and does not go. */
  isHeldBack(recordId: string): boolean;
  /**
   * Takes documents up that are what their names say, and notes those of a newer edition; refused as a whole when nothing can be
   * written now.
   */
  take(
    documents: readonly RecordDocument[],
    newer?: readonly NewerDocument[],
  ): Promise<Result<Taken, 'notTaken'>>;
}

/** What became of documents that were offered. */
export interface Taken {
  readonly refused: readonly RefusedDocument[];
  /** By name: not now, as an erasing that somebody who is open is in the way of. They are offered again. */
  readonly later: readonly string[];
}

/** What one exchange did: so many came, went, and were deleted there because they are erased; and what stays behind by name. */
export interface Exchanged {
  readonly came: number;
  readonly went: number;
  readonly gone: number;
  readonly refused: readonly RefusedDocument[];
  readonly later: readonly LaterDocument[];
}

/**
 * Why an exchange did not come to its end. `off`: there are no other stations. `gone`: they cannot be reached. `silent`: the
 * station's own server says that the database behind it does not answer; `turnedAway`: that this station is not let in, or
 * the database is not there. `strange`: what answers is no database of records. `notTaken`: this station could not write.
 * `stopped`: it was told to.
 */
export type ReplicaFailure = 'off' | 'gone' | 'silent' | 'turnedAway' | 'strange' | 'notTaken' | 'stopped';

/** Other stations, however they are reached. Checked in tests/src/storage/replica/couch.test.ts. */
export interface Replica {
  /** Exchanges what either side lacks. Broken off anywhere, the next one goes on; done again, it changes nothing. */
  exchange(here: Here, signal: AbortSignal): Promise<Result<Exchanged, ReplicaFailure>>;
  /** How many of these are not there, as far as is known? null before the first time that it was known. */
  countMissing(ids: ReadonlySet<string>): number | null;
}

/** A station for itself alone. */
export const noReplica: Replica = {
  exchange: () => Promise.resolve({ ok: false, error: 'off' }),
  countMissing: () => null,
};
