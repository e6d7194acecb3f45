import fc from 'fast-check';
import { describe, expect, it, vi } from 'vitest';
import type { ClosedRecord } from '../../../shared/records/closedRecord';
import { placeBrought } from '../../../src/station/placeBrought';

const record = (id: number, endedAtMs: number, isBrought: boolean): ClosedRecord => ({
  ...{ v: 1, id: `r${id}`, endedAtMs, ticketKey: 'QF', how: 'calledOff', log: [] },
  ...{ hasStandingStop: false, hasClearedStop: false },
  ...(isBrought ? { broughtIn: { atMs: 1, settings: [] } } : {}),
});
const ids = (closed: readonly ClosedRecord[]) => closed.map(({ id }) => id);

/** By the rule's own words, one after the other: each behind the last that ended no later, among those that stand already. */
function placeOneByOne(closed: readonly ClosedRecord[]): readonly ClosedRecord[] {
  const placed = closed.filter(({ broughtIn }) => broughtIn === undefined);
  const brought = closed.filter(({ broughtIn }) => broughtIn !== undefined);
  for (const each of brought.sort((one, other) => one.endedAtMs - other.endedAtMs)) {
    const before = placed.findLastIndex(({ endedAtMs }) => endedAtMs <= each.endedAtMs);
    placed.splice(before + 1, 0, each);
  }
  return placed;
}

describe('records that came in from elsewhere', () => {
  it('stand where they ended, and those closed here in their order, though the clock was set back between them', () => {
    const closed = [record(1, 10, false), record(2, 30, false), record(3, 20, false), record(4, 25, true)];
    expect(ids(placeBrought([...closed, record(5, 5, true), record(6, 20, true)]))).toEqual([
      'r5',
      'r1',
      'r2',
      'r3',
      'r6',
      'r4',
    ]);
  });

  it('stand as if each were put in its place by itself, whatever came when', () => {
    const moments = fc.array(fc.tuple(fc.nat(12), fc.boolean()), { maxLength: 40 });
    fc.assert(
      fc.property(moments, (told) => {
        const closed = told.map(([atMs, isBrought], id) => record(id, atMs, isBrought));
        expect(ids(placeBrought(closed))).toEqual(ids(placeOneByOne(closed)));
      }),
      { numRuns: 500, seed: 20_261_127 },
    );
  });

  it('cost one look at each and a sort’s comparisons, however many there are', () => {
    const count = 8_000;
    let looks = 0;
    let compared = 0;
    const closed = Array.from({ length: count }, (_none, id) => {
      const atMs = (id * 7_919) % count;
      return Object.defineProperty(record(id, atMs, id % 2 === 0), 'endedAtMs', {
        get: () => {
          looks += 1;
          return atMs;
        },
      });
    });
    const sort = Array.prototype.sort;
    const spy = vi.spyOn(Array.prototype, 'sort').mockImplementation(function (this: unknown[], order) {
      return sort.call(this, (one, other) => {
        compared += 1;
        return order?.(one, other) ?? 0;
      });
    });
    placeBrought(closed);
    spy.mockRestore();
    console.info(`${looks} looks and ${compared} comparisons for ${count} records`);
    expect(looks).toBe(count);
    expect(compared).toBeGreaterThan(count);
    expect(compared).toBeLessThan(count * Math.log2(count));
  });
});
