import { accept, refuse } from '../../../shared/result';
import { type AskFailure, type AskParts, makeAsk } from './ask';
import { type Looked, pull } from './pull';
import { push, takeAway } from './push';
import type { Here, RefusedDocument, Replica, ReplicaFailure } from './replica';
import { makeThere } from './there';

/** A single question that is too large is no failure any more where its pieces were named. */
const nameFailure = (failure: AskFailure): ReplicaFailure => (failure === 'tooLarge' ? 'strange' : failure);

/**
 * Other stations through a database that speaks CouchDB's HTTP (published: CouchDB documentation, /{db}/_changes,
 * _all_docs, _bulk_docs): first what came there, then what is not here, then what is not there, then what is erased. It holds
 * in memory what is there, so nothing is kept anywhere, and a station that starts looks once through all names.
 * Checked in tests/src/storage/replica/couch.test.ts.
 */
export function makeCouch(parts: AskParts): Replica {
  const there = makeThere();
  const looked: Looked = new Map();
  let wasReached = false;

  /** What was found wrong there stands as long as it lies there. */
  const listRefused = (): readonly RefusedDocument[] =>
    [...looked].flatMap(([id, { rev, refused }]) =>
      refused !== null && there.revs.get(id) === rev ? [refused] : [],
    );

  return {
    countMissing: (ids) => (wasReached ? [...ids].filter((id) => !there.revs.has(id)).length : null),

    async exchange(station, signal) {
      const here: Here = { ...station, readIds: () => station.readIds(signal) };
      const ask = makeAsk(parts, signal);
      const read = await there.readOn(ask);
      // A server of another kind answers any address with something: then there are no other stations.
      if (!read.ok) return refuse(read.error === 'strange' && !wasReached ? 'off' : nameFailure(read.error));
      wasReached = true;
      const came = await pull(ask, here, there, looked);
      if (!came.ok) return refuse(nameFailure(came.error));
      const notSent: RefusedDocument[] = [];
      const went = await push(ask, here, there, (each) => notSent.push(each));
      if (!went.ok) return refuse(nameFailure(went.error));
      const gone = await takeAway(ask, here, there);
      if (!gone.ok) return refuse(nameFailure(gone.error));
      const refused = [...listRefused(), ...notSent];
      return accept({ ...came.value, went: went.value, gone: gone.value, refused });
    },
  };
}
