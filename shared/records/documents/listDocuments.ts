import * as v from 'valibot';
import type { ClosedRecord } from '../closedRecord';
import { listEditions } from '../json/carriedSettings';
import { isPracticeId } from '../practiceId';
import type { Settings } from '../settings';
import { tellEntries } from '../skinTest/told';
import { untell } from '../tombstone';
import { documentConsultation, documentErased, documentSkinTest, type RecordDocument } from './document';
import { leanEdition, leanEntry } from './leanSettings';

/** What a station holds, as it is stored. */
export interface Held {
  readonly closed: readonly ClosedRecord[];
  /** Each skin test's log, entry by entry; one that was told twice stands here twice. */
  readonly skinTests: readonly { readonly id: string; readonly log: readonly unknown[] }[];
  /** The log of erasings. */
  readonly erased: readonly unknown[];
}

const namesSettings = v.looseObject({ settingsId: v.number() });
const countsForOneVisit = v.looseObject({ payload: v.looseObject({ forVisit: v.string() }) });

/** A log that this station cannot read any more goes along as it lies. */
function bodyOf({ id, log, broughtIn }: ClosedRecord, find: (settingsId: number) => Settings) {
  const named = log.filter((entry) => v.is(namesSettings, entry));
  const editions = broughtIn?.settings ?? listEditions(named, find);
  return { id, settings: editions.map(leanEdition), log };
}

/**
 * Everything of this station that another one may hold too: what is closed, skin tests and erasings. Who is open stays where
 * she is, and so does a skin test that she did not agree to have kept: it counts for her visit here. What was practised stays
 * too.
 * Checked in tests/shared/records/documents/listDocuments.test.ts.
 */
export function* listDocuments(
  { closed, skinTests, erased }: Held,
  find: (settingsId: number) => Settings,
): Generator<RecordDocument, void> {
  for (const entry of erased) yield documentErased(untell(entry));
  for (const record of closed) if (!isPracticeId(record.id)) yield documentConsultation(bodyOf(record, find));
  for (const { id, log } of skinTests) {
    const told = tellEntries(log, find).map(leanEntry);
    if (isPracticeId(id)) continue;
    if (!v.is(countsForOneVisit, told[0]?.entry)) yield documentSkinTest({ id, log: told });
  }
}
