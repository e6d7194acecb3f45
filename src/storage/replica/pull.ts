import { accept, type Result } from '../../../shared/result';
import type { Ask, AskFailure } from './ask';
import { fetchDocuments } from './fetchDocuments';
import { readRecordId } from './name';
import type { Here, LaterDocument, RefusedDocument } from './replica';
import type { There } from './there';

/** What was looked at once is looked at again only in another edition: each name with that edition, and what was wrong. */
export type Looked = Map<string, { readonly rev: string; readonly refused: RefusedDocument | null }>;

/** Names of the database's own, which are no documents of anybody. */
const isOwn = (id: string): boolean => id.startsWith('_');

/** A document never changes, so one that is there in a later edition than its first was changed by somebody. */
const isFirst = (rev: string): boolean => rev.startsWith('1-');

/**
 * Brings what is there and not here: erasings first, so that nothing comes that is erased. Answers how many came, and
 * what waits. What is here too, and was changed there, is compared.
 */
export async function pull(
  ask: Ask,
  here: Here,
  { revs }: There,
  looked: Looked,
): Promise<Result<{ readonly came: number; readonly later: readonly LaterDocument[] }, AskFailure>> {
  const note = (id: string, refused: RefusedDocument | null): void =>
    void looked.set(id, { rev: revs.get(id) ?? '', refused });
  const refuse = (refused: RefusedDocument): void => note(refused.id, refused);
  const held = await here.readIds();
  const fresh = [...revs].flatMap(([id, rev]) => (isOwn(id) || looked.get(id)?.rev === rev ? [] : [id]));
  const isNew = (id: string): boolean => !held.has(id);
  const waits: LaterDocument[] = [];
  let came = 0;

  const bring = (ids: readonly string[]) =>
    fetchDocuments(ask, ids, {
      async take(documents, newer) {
        const taken = await here.take(documents, newer);
        if (!taken.ok) return taken;
        const { refused, later } = taken.value;
        for (const { id } of documents) if (!later.includes(id)) note(id, null);
        for (const each of refused) refuse(each);
        // An erasing waits for a person alone.
        for (const id of later) waits.push({ id, why: readRecordId(id) === null ? 'openHere' : 'fromLater' });
        came += documents.length - refused.length - later.length;
        return accept(undefined);
      },
      refuse,
    });

  for (const id of fresh) if (readRecordId(id) === undefined) refuse({ id, why: 'foreign' });
  const changed = fresh.filter((id) => held.has(id) && !isFirst(revs.get(id) ?? ''));
  const compared = await fetchDocuments(ask, changed, {
    async take(documents) {
      for (const { id } of documents) note(id, null);
      return accept(undefined);
    },
    refuse: ({ id }) => refuse({ id, why: 'otherContent' }),
  });
  if (!compared.ok) return compared;
  const erasings = await bring(fresh.filter((id) => isNew(id) && readRecordId(id) === null));
  if (!erasings.ok) return erasings;
  const rest = await bring(
    fresh.filter((id) => {
      const recordId = readRecordId(id);
      return isNew(id) && typeof recordId === 'string' && !here.isErased(recordId);
    }),
  );
  return rest.ok ? accept({ came, later: waits }) : rest;
}
