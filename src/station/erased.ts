import { writeCanonical } from '../../shared/records/documents/canonical';
import { listToldForAge, readErasedIds, untell } from '../../shared/records/tombstone';
import type { Json } from '../storage/json';
import { CLOSED, ERASED_LOG, OPEN, readLogId, SKIN_TEST, UNJUDGED_LOG } from './logNames';

type Logs<Entry> = ReadonlyMap<string, readonly Entry[]>;

/** Which records were erased, by what these logs say themselves? */
export const listErased = (logs: Logs<unknown>): ReadonlySet<string> =>
  new Set((logs.get(ERASED_LOG) ?? []).flatMap((entry) => readErasedIds(entry) ?? []));

/** Which records did other houses erase for their age? What is kept of them here stays, and is not handed on. */
export const listHeldBack = (logs: Logs<unknown>): ReadonlySet<string> =>
  new Set(listToldForAge(logs.get(ERASED_LOG) ?? []).flatMap(({ ids }) => ids));

/** Which of these erasings, as they are to be stored, are not in this log yet? One that is taken at its word is more than one that is not. */
export function listNewErasings(known: readonly Json[], come: readonly unknown[]): readonly Json[] {
  const held = new Set(known.map(writeCanonical));
  const fresh = come.filter(
    (entry) => !held.has(writeCanonical(entry)) && !held.has(writeCanonical(untell(entry))),
  );
  // Both copies hold plain JSON: so is whatever came in.
  return fresh as readonly Json[];
}

/** Read without its schema: a record that this station does not understand may be erased too. */
const findId = (entry: unknown): unknown =>
  typeof entry === 'object' && entry !== null && 'id' in entry ? entry.id : null;

/** What is left of one log where these are erased? */
function leaveOutOf<Entry>(name: string, entries: readonly Entry[], erased: ReadonlySet<string>) {
  const kind = [OPEN, SKIN_TEST].find((prefix) => name.startsWith(prefix));
  if (kind !== undefined) return erased.has(readLogId(name)) ? [] : entries;
  if (!name.startsWith(CLOSED) && name !== UNJUDGED_LOG) return entries;
  const left = entries.filter((entry) => !erased.has(findId(entry) as string));
  return left.length === entries.length ? entries : left;
}

/**
 * The same logs as if what is erased had never been in them. A tombstone wins whatever else is written, so this is what
 * counts of any logs: those of the store, of a backup that is made, and of one that is brought in.
 * Checked in tests/src/station/erasing.test.ts.
 */
export function leaveOutErased<Entry>(
  logs: Logs<Entry>,
  erased: ReadonlySet<string> = listErased(logs),
): Logs<Entry> {
  if (erased.size === 0) return logs;
  const left = [...logs].map(([name, entries]) => [name, leaveOutOf(name, entries, erased)] as const);
  return new Map(left.filter(([name, entries]) => entries.length > 0 || logs.get(name)?.length === 0));
}

/** Which logs still hold what is erased, and what is to be left of each? Empty once every erasing is finished. */
export function listSweeps(
  logs: Logs<Json>,
): readonly { readonly log: string; readonly left: readonly Json[] }[] {
  const left = leaveOutErased(logs);
  return [...logs].flatMap(([log, entries]) =>
    left.get(log) === entries ? [] : [{ log, left: left.get(log) ?? [] }],
  );
}
