import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CLOSED_VERSION, type ClosedRecord } from '../../../shared/records/closedRecord';
import { mergeClosed } from '../../../shared/records/mergeClosed';
import { holds } from '../seeded';

const record = (id: string, log: readonly unknown[] = [], endedAtMs = 1): ClosedRecord => ({
  v: CLOSED_VERSION,
  ...{ id, log, endedAtMs, ticketKey: 'q.f.', how: 'done', hasStandingStop: false, hasClearedStop: false },
});

/** What stands on a station: what came later counts. */
const stand = (records: readonly ClosedRecord[]) => new Map(records.map((each) => [each.id, each]));
const take = (ours: readonly ClosedRecord[], theirs: readonly ClosedRecord[]) => [
  ...ours,
  ...mergeClosed([...stand(ours).values()], theirs).added,
];
const sorted = (records: readonly ClosedRecord[]) =>
  [...stand(records).values()].sort((one, other) => (one.id < other.id ? -1 : 1));

const some = fc.array(
  fc
    .tuple(
      fc.constantFrom('aaaa', 'bbbb', 'cccc', 'dddd'),
      fc.array(fc.constantFrom(1, 2, 3), { maxLength: 3 }),
    )
    .map(([id, log]) => record(id, log)),
  { maxLength: 6 },
);

describe('closed records of several stations', () => {
  it('are the same in whatever order they come together, and however often', () => {
    let differed = 0;
    holds(
      fc.property(some, some, some, (a, b, c) => {
        const [x, y, z] = [take([], a), take([], b), take([], c)];
        const all = sorted(take(take(x, y), z));
        expect(sorted(take(take(z, x), y))).toEqual(all);
        expect(sorted(take(x, take(y, z)))).toEqual(all);
        expect(mergeClosed(all, [...x, ...y, ...z]).added).toEqual([]);
        differed += mergeClosed(x, y).differing.length;
      }),
    );
    expect(differed).toBeGreaterThan(100);
  });

  it('are added once, and counted where both have them, in whatever order their fields were written', () => {
    const ours = [record('aaaa', [{ type: 'OPENED', seq: 0 }])];
    expect(mergeClosed(ours, [record('aaaa', [{ seq: 0, type: 'OPENED' }])])).toEqual({
      added: [],
      same: 1,
      differing: [],
    });
    expect(mergeClosed(ours, [record('bbbb'), record('bbbb')])).toMatchObject({
      added: [{ id: 'bbbb' }],
      same: 1,
      differing: [],
    });
  });

  it('of one name with other content are named; the longer log stands', () => {
    const longer = record('aaaa', [1, 2]);
    const shorter = record('aaaa', [1]);
    expect(mergeClosed([shorter], [longer])).toEqual({ added: [longer], same: 0, differing: ['aaaa'] });
    expect(mergeClosed([longer], [shorter])).toEqual({ added: [], same: 0, differing: ['aaaa'] });
  });
});
