import type { ClosedRecord } from './closedRecord';

/** What another station's closed records add to ours. */
export interface Merged {
  /** To be written here: what we have not, and what stands before ours. */
  readonly added: readonly ClosedRecord[];
  /** Held by both, letter for letter. */
  readonly same: number;
  /** Held by both under one name with other content: which. The one that stands is the same on either station. */
  readonly differing: readonly string[];
}

/** One text for one content, whatever the order in which its fields were written. */
const writeSorted = (value: unknown): string =>
  JSON.stringify(value, (_, each: unknown) =>
    typeof each === 'object' && each !== null && !Array.isArray(each)
      ? Object.fromEntries(Object.entries(each).sort(([one], [other]) => (one < other ? -1 : 1)))
      : each,
  );

/** Of two records of one name the one with the longer log stands, else the one whose text comes later: a total order. */
function standsBefore(one: ClosedRecord, other: ClosedRecord): boolean {
  if (one.log.length !== other.log.length) return one.log.length > other.log.length;
  return writeSorted(one) > writeSorted(other);
}

/**
 * Which closed records come over from another station? The union by name; order-free and idempotent, so that two stations
 * that exchange theirs in whatever order and however often hold the same. Nothing is taken away: what does not stand
 * stays in the journal that has it. Checked in tests/shared/records/mergeClosed.test.ts.
 */
export function mergeClosed(ours: readonly ClosedRecord[], theirs: readonly ClosedRecord[]): Merged {
  const standing = new Map(ours.map((record) => [record.id, record]));
  const added = new Map<string, ClosedRecord>();
  const differing = new Set<string>();
  let same = 0;
  for (const record of theirs) {
    const held = standing.get(record.id);
    if (held !== undefined && writeSorted(held) === writeSorted(record)) {
      same += 1;
      continue;
    }
    if (held !== undefined) differing.add(record.id);
    if (held === undefined || standsBefore(record, held)) {
      standing.set(record.id, record);
      added.set(record.id, record);
    }
  }
  return { added: [...added.values()], same, differing: [...differing] };
}
