import { digest } from '../../../../shared/records/documents/canonical';
import { documentConsultation, type RecordDocument } from '../../../../shared/records/documents/document';
import {
  type Documents,
  gatherDocuments,
  mergeDocuments,
} from '../../../../shared/records/documents/mergeDocuments';
import { readErasedIds } from '../../../../shared/records/tombstone';
import { accept } from '../../../../shared/result';
import { makeCouch } from '../../../../src/storage/replica/couch';
import type { Here } from '../../../../src/storage/replica/replica';
import { bodies } from '../../../shared/records/documents/world';
import type { Database } from './database';

/** A station as a replica sees it: documents, merged as every station merges them. */
export function makeShelf(documents: Iterable<RecordDocument> = []) {
  let held: Documents = gatherDocuments(documents);
  const add = (more: Iterable<RecordDocument>): void => {
    held = mergeDocuments(held, gatherDocuments(more));
  };
  const here: Here = {
    readIds: async () => new Set(held.keys()),
    read: (ids) => ids.flatMap((id) => held.get(id) ?? []),
    isHeldBack: () => false,
    isErased: (recordId) =>
      [...held.values()].some(
        ({ kind, body }) => kind === 'erased' && readErasedIds(body)?.includes(recordId),
      ),
    async take(came) {
      add(came);
      return accept({ refused: [], later: [] });
    },
  };
  return { here, add, ids: () => [...held.keys()].sort(), digest: () => digest([...held.keys()].sort()) };
}

/** A station of its own: a shelf, and a replica that knows nothing yet. */
export function makeStationShelf(database: Database, documents: Iterable<RecordDocument> = []) {
  const shelf = makeShelf(documents);
  const replica = makeCouch({ base: database.base, fetch });
  return { ...shelf, replica, exchange: () => replica.exchange(shelf.here, new AbortController().signal) };
}

/** Invented records of this station: a shipped log under other ids. */
export function* inventRecords(
  count: number,
  station: string,
): Generator<ReturnType<typeof documentConsultation>> {
  const [body] = bodies;
  if (body === undefined) throw new Error('no shipped log closed');
  for (let made = 0; made < count; made += 1) {
    yield documentConsultation({ ...body, id: `${station}${made.toString(36).padStart(6, '0')}` });
  }
}
