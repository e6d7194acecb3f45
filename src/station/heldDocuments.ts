import type { RecordDocument } from '../../shared/records/documents/document';
import { type Held, listDocuments } from '../../shared/records/documents/listDocuments';
import type { Settings } from '../../shared/records/settings';
import { inTurns } from '../tablet/inTurns';

/** What is held, by parts of one document each, and the house rules that entries name. */
export interface HeldSource {
  readonly held: Held;
  readonly find: (settingsId: number) => Settings;
}

const none: Held = { closed: [], skinTests: [], erased: [] };

/** The newest entry is what tells a log from what it was before; one that came in twice has entries of its own. */
const keyOf = (log: readonly unknown[]): object | null => {
  const last = log.at(-1);
  return typeof last === 'object' ? last : null;
};

/** The parts of one document each, and by what each is known again: a closed record never changes, and its log is not read. */
function* listParts({ closed, skinTests, erased }: Held) {
  for (const entry of erased) yield { key: keyOf([entry]), only: () => ({ ...none, erased: [entry] }) };
  for (const record of closed) yield { key: record, only: () => ({ ...none, closed: [record] }) };
  for (const test of skinTests) yield { key: keyOf(test.log), only: () => ({ ...none, skinTests: [test] }) };
}

/** What was named once. Without a name it goes nowhere, as a skin test that counts for one visit. */
interface Named {
  readonly name: string | null;
  readonly part: Held;
}

/** So many that are known already are passed over before whatever else is to be done has its turn. Assumed because to look them up takes less than 1 ms. */
const ASSUMED_PASSED_OVER_AT_ONCE = 1000;

/**
 * The documents of this station by name. To name one its whole log is read through, so each is named once, in turns with
 * whatever else is to be done, and remembered for as long as it is held. Checked in tests/src/station/sharing.test.ts.
 */
export function makeHeldDocuments(readSource: () => HeldSource) {
  const names = new WeakMap<object, Named>();
  let byName = new Map<string, Held>();

  function* nameAll({ held, find }: HeldSource, stop?: AbortSignal) {
    const found = new Map<string, Held>();
    const ids = new Set<string>();
    let passed = 0;
    for (const { key, only } of listParts(held)) {
      const known = key === null ? undefined : names.get(key);
      const { name, part } = known ?? nameOf(only(), find);
      if (known === undefined && key !== null) names.set(key, { name, part });
      if (name !== null) {
        found.set(name, part);
        ids.add(name);
      }
      passed += 1;
      if (known !== undefined && passed % ASSUMED_PASSED_OVER_AT_ONCE !== 0) continue;
      yield;
      stop?.throwIfAborted();
    }
    byName = found;
    return ids;
  }

  return {
    readIds: (stop?: AbortSignal): Promise<ReadonlySet<string>> => inTurns(nameAll(readSource(), stop)),
    read(ids: readonly string[]): readonly RecordDocument[] {
      const { find } = readSource();
      return ids.flatMap((id) => [...listDocuments(byName.get(id) ?? none, find)]);
    },
  };
}

const nameOf = (part: Held, find: HeldSource['find']): Named => ({
  name: [...listDocuments(part, find)][0]?.id ?? null,
  part,
});
