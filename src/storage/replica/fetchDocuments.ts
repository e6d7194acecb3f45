import {
  type NewerDocument,
  type RecordDocument,
  readDocument,
  readNewer,
} from '../../../shared/records/documents/document';
import { accept, type Result } from '../../../shared/result';
import { rowsSchema } from './answers';
import type { Ask, AskFailure } from './ask';
import { inPieces } from './inPieces';
import type { RefusedDocument } from './replica';

/** So many documents are asked for at one go. Assumed because a record is some 30 kB, so that this is 3 MB. */
const ASSUMED_DOCUMENTS_AT_ONCE = 100;

/** Who gets what was fetched: documents that are what their names say, those of a newer edition apart, and the names of all that is not taken. */
export interface Taker {
  take(
    documents: readonly RecordDocument[],
    newer: readonly NewerDocument[],
  ): Promise<Result<void, AskFailure>>;
  refuse(refused: RefusedDocument): void;
}

/** Nothing but name, kind and body is read: what else lies there is of the database. */
function readRow({ _id, kind, body }: { readonly [name: string]: unknown; readonly _id: string }) {
  const read = readDocument({ id: _id, kind, body });
  if (read.ok) return read.value;
  if (read.error !== 'notUnderstood') return { id: _id, why: 'damaged', newer: null } as const;
  return { id: _id, why: 'newer', newer: readNewer({ id: _id, kind: String(kind), body }) } as const;
}

/**
 * Brings documents by name, piece by piece, each verified by its own content before anybody sees it. What is not there
 * is passed over. Checked in tests/src/storage/replica/poison.test.ts.
 */
export const fetchDocuments = (
  ask: Ask,
  ids: readonly string[],
  taker: Taker,
): Promise<Result<void, AskFailure>> =>
  inPieces(
    ids,
    ASSUMED_DOCUMENTS_AT_ONCE,
    async (keys) => {
      const rows = await ask('_all_docs?include_docs=true', rowsSchema, { keys });
      if (!rows.ok) return rows;
      const asked = new Set(keys);
      const read = rows.value.rows.flatMap(({ doc }) => (doc && asked.has(doc._id) ? [readRow(doc)] : []));
      const documents: RecordDocument[] = [];
      const ofNewer: NewerDocument[] = [];
      const refused: RefusedDocument[] = [];
      for (const each of read) {
        if (!('why' in each)) documents.push(each);
        else {
          const { id, why, newer } = each;
          if (newer !== null) ofNewer.push(newer);
          refused.push({ id, why });
        }
      }
      const taken =
        documents.length + ofNewer.length === 0 ? accept(undefined) : await taker.take(documents, ofNewer);
      if (taken.ok) for (const each of refused) taker.refuse(each);
      return taken;
    },
    (id) => taker.refuse({ id, why: 'tooLarge' }),
  );
