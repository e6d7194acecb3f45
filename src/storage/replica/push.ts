import type { RecordDocument } from '../../../shared/records/documents/document';
import { accept, type Result } from '../../../shared/result';
import { keptSchema } from './answers';
import type { Ask, AskFailure } from './ask';
import { fetchDocuments } from './fetchDocuments';
import { inPieces } from './inPieces';
import { readRecordId } from './name';
import type { Here, RefusedDocument } from './replica';
import type { There } from './there';

/** So many are sent at one go. Assumed because a record is some 30 kB, so that this is 1.5 MB; too much is halved. */
const ASSUMED_SENT_AT_ONCE = 50;

/** Sends documents, and says which the other side says it has now. */
async function send(ask: Ask, docs: readonly unknown[], there: There) {
  const kept = await ask('_bulk_docs', keptSchema, { docs });
  if (!kept.ok) return kept;
  const done = new Set<string>();
  for (const { id, ok, rev } of kept.value) {
    if (ok !== true || id === undefined) continue;
    done.add(id);
    there.revs.set(id, rev ?? '');
  }
  return accept(done);
}

const writeRow = ({ id, kind, body }: RecordDocument) => ({ _id: id, kind, body });

/**
 * Sends what is here and not there. What was not taken is looked at there: it went only if exactly its content stands under
 * its name, whoever wrote it. Answers how many went. Checked in tests/src/storage/replica/couch.test.ts.
 */
export async function push(
  ask: Ask,
  here: Here,
  there: There,
  onRefused: (refused: RefusedDocument) => void,
): Promise<Result<number, AskFailure>> {
  const mayGo = (recordId: string): boolean => !here.isErased(recordId) && !here.isHeldBack(recordId);
  const missing = [...(await here.readIds())].filter(
    (id) => !there.revs.has(id) && mayGo(readRecordId(id) ?? ''),
  );
  // Erasings first: whatever breaks off after them, nothing of what they name comes anywhere.
  const isErasing = (id: string): boolean => readRecordId(id) === null;
  const inOrder = [...missing.filter(isErasing), ...missing.filter((id) => !isErasing(id))];
  let went = 0;

  /** What stands there under these names: the same content is all that was wanted. */
  const compare = async (ids: readonly string[]): Promise<Result<void, AskFailure>> => {
    const open = new Set(ids);
    const read = await fetchDocuments(ask, ids, {
      async take(documents) {
        for (const { id } of documents) {
          open.delete(id);
          there.revs.set(id, there.revs.get(id) ?? '');
        }
        return accept(undefined);
      },
      refuse({ id }) {
        open.delete(id);
        onRefused({ id, why: 'otherContent' });
      },
    });
    if (read.ok) for (const id of open) onRefused({ id, why: 'notKept' });
    return read;
  };

  const sent = await inPieces(
    inOrder,
    ASSUMED_SENT_AT_ONCE,
    async (ids) => {
      const documents = here.read(ids);
      if (documents.length === 0) return accept(undefined);
      const done = await send(ask, documents.map(writeRow), there);
      if (!done.ok) return done;
      went += done.value.size;
      const rest = documents.flatMap(({ id }) => (done.value.has(id) ? [] : [id]));
      return rest.length === 0 ? accept(undefined) : compare(rest);
    },
    (id) => onRefused({ id, why: 'tooLarge' }),
  );
  return sent.ok ? accept(went) : sent;
}

/**
 * Takes away there what was erased, whoever sent it: the name goes on as deleted, without content. Answers how many.
 * Earlier editions lie in the files of the database until it is compacted. What somebody changed meanwhile goes next time.
 */
export async function takeAway(ask: Ask, here: Here, there: There): Promise<Result<number, AskFailure>> {
  const erased = [...there.revs].filter(([id, rev]) => {
    const recordId = readRecordId(id);
    return rev !== '' && typeof recordId === 'string' && here.isErased(recordId);
  });
  let gone = 0;
  const done = await inPieces(
    erased,
    ASSUMED_SENT_AT_ONCE,
    async (piece) => {
      const docs = piece.map(([_id, _rev]) => ({ _id, _rev, _deleted: true }));
      const sent = await send(ask, docs, there);
      if (!sent.ok) return sent;
      for (const id of sent.value) there.revs.delete(id);
      gone += sent.value.size;
      return accept(undefined);
    },
    () => undefined,
  );
  return done.ok ? accept(gone) : done;
}
