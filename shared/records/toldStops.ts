import { digest } from './documents/canonical';
import type { ConsultationEvent } from './event';
import { beginRecord, type SpokenFor } from './record';
import { reduce } from './reduce';
import { listStandingStops, type StandingStop } from './standingStop';

/** A stop as it was told once: its kind, and the digest of the entry that told it. */
export type ToldStop = Omit<SpokenFor, 'record'>;

const nameOf = ({ stop, seq }: StandingStop): string => `${stop} ${seq ?? ''}`;

/**
 * Which absolute stops stand at the end of this log, and which entry told each? So a stop has the same name at every station
 * and in every account of the record that shares that entry; told again, after it was taken back or in another account, it
 * is another stop. Checked in tests/src/station/stopOccurrences.test.ts.
 */
export function listToldStops(id: string, log: readonly ConsultationEvent[]): readonly ToldStop[] {
  let record = beginRecord(id);
  let standing: ReadonlyMap<string, { readonly stop: string; readonly event: ConsultationEvent }> = new Map();
  for (const event of log) {
    record = reduce(record, event);
    const before = standing;
    standing = new Map(
      listStandingStops(record).map((each) => {
        const name = nameOf(each);
        return [name, before.get(name) ?? { stop: each.stop, event }];
      }),
    );
  }
  return [...standing.values()].map(({ stop, event }) => ({ stop, entry: digest(event) }));
}
