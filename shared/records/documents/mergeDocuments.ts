import { readErasedIds, readTombstone } from '../tombstone';
import { writeCanonical } from './canonical';
import type { RecordDocument } from './document';

/** Documents by their names. */
export type Documents = ReadonlyMap<string, RecordDocument>;

type Told = Exclude<RecordDocument, { readonly kind: 'erased' }>;

/** What people did, without the rules it was judged under. */
export const listEntriesOf = (document: Told): readonly unknown[] =>
  document.kind === 'skinTest' ? document.body.log.map(({ entry }) => entry) : document.body.log;

/** Is the one nothing but the beginning of the other? Of two with the same entries the first by name stays. */
function saysNoMore(one: Told, other: Told): boolean {
  const mine = listEntriesOf(one);
  const theirs = listEntriesOf(other);
  if (mine.length > theirs.length || (mine.length === theirs.length && one.id <= other.id)) return false;
  return mine.every((entry, index) => writeCanonical(entry) === writeCanonical(theirs[index]));
}

/** Which of these tellings of one record are nothing but the beginning of another? */
const listBeginnings = (told: readonly Told[]): readonly Told[] =>
  told.filter((one) => told.some((other) => other !== one && saysNoMore(one, other)));

/** What is erased for every house: what was only too old at one of them is that one's own matter. */
const listErasedIds = (all: Documents): ReadonlySet<string> => {
  const erased = new Set<string>();
  for (const { kind, body } of all.values()) {
    if (kind !== 'erased' || readTombstone(body)?.code === 'keptLongEnough') continue;
    for (const id of readErasedIds(body) ?? []) erased.add(id);
  }
  return erased;
};

/** A consultation and a skin test of one id, should there ever be two, are two records. */
const keyOf = ({ kind, body }: Told): string => (kind === 'skinTest' ? `${kind}:${body.id}` : body.id);

/**
 * Takes out of this set what is erased, and what is only the beginning of another of its record. Nearly every record has one
 * document, so only those that came with more than one are looked into.
 */
function settle(all: Map<string, RecordDocument>): Documents {
  const erased = listErasedIds(all);
  const first = new Map<string, Told>();
  const several = new Map<string, Told[]>();
  const goes: string[] = [];
  for (const document of all.values()) {
    if (document.kind === 'erased') continue;
    if (erased.has(document.body.id)) {
      goes.push(document.id);
      continue;
    }
    const key = keyOf(document);
    const before = first.get(key);
    if (before === undefined) first.set(key, document);
    else several.set(key, [...(several.get(key) ?? [before]), document]);
  }
  for (const told of several.values()) goes.push(...listBeginnings(told).map(({ id }) => id));
  for (const id of goes) all.delete(id);
  return all;
}

/**
 * What do two stations know together? All that either holds, whatever came first: what one of them erased is in neither, and
 * of a log that only went on the longer one stays. What they tell otherwise of one record is kept twice: both are evidence.
 * Merging again, in any order or grouping, gives the same. Checked in tests/shared/records/documents/mergeDocuments.test.ts.
 */
export const mergeDocuments = (here: Documents, there: Documents): Documents =>
  settle(new Map([...here, ...there]));

/** Documents as a set, what is erased among them left out already. */
export const gatherDocuments = (documents: Iterable<RecordDocument>): Documents => {
  const all = new Map<string, RecordDocument>();
  for (const each of documents) all.set(each.id, each);
  return settle(all);
};
