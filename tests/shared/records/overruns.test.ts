import { describe, expect, it } from 'vitest';
import type { Clock } from '../../../shared/records/clock';
import { listMissed, listOverruns } from '../../../shared/records/overruns';
import { playUntil } from '../../src/screens/playStory';

const minute = 60_000;
const clock = (change: Partial<Clock>): Clock => ({
  id: 'strand-1',
  kind: 'strand',
  zone: 'lengths',
  startedAtMs: 0,
  looks: null,
  dueAtMs: 20 * minute,
  limitAtMs: 40 * minute,
  lookedAtMs: [],
  acknowledgedAtMs: null,
  endedAtMs: null,
  ...change,
});
const over = (change: Partial<Clock>, nowMs = 0) =>
  listOverruns({ clocks: [clock(change)] }, nowMs).map(({ overMs }) => overMs / minute);

describe('an overrun', () => {
  // From 3 min over on. ASSUMED_SILENT_OVER_MS.
  it('begins where the station calls it one, and not before', () => {
    expect(over({ endedAtMs: 23 * minute - 1 })).toEqual([]);
    expect(over({ endedAtMs: 23 * minute })).toEqual([3]);
    expect(over({ endedAtMs: 19 * minute })).toEqual([]);
  });

  it('of a clock that still runs counts by now', () => {
    expect(over({}, 22 * minute)).toEqual([]);
    expect(over({}, 30 * minute)).toEqual([10]);
  });

  it('is of strands and heads alone', () => {
    expect(over({ kind: 'head', endedAtMs: 30 * minute })).toEqual([10]);
    for (const kind of ['dry', 'incompatibility'] as const)
      expect(over({ kind, endedAtMs: 30 * minute })).toEqual([]);
  });

  it('stands in the order in which they were due', () => {
    const clocks = [clock({ id: 'late', dueAtMs: 9 * minute }), clock({ id: 'early', dueAtMs: 5 * minute })];
    expect(listOverruns({ clocks }, 60 * minute).map(({ id }) => id)).toEqual(['early', 'late']);
  });
});

describe('missed looks', () => {
  it('are those of strands and bowls together', () => {
    const { record } = playUntil('whole').consultation;
    const each = [...record.strands, ...record.bowls].map(({ missedLooksAtMs }) => missedLooksAtMs.length);
    expect(listMissed(record)).toHaveLength(each.reduce((sum, count) => sum + count, 0));
    const [strand] = record.strands;
    if (strand === undefined) throw new Error('no strand');
    expect(listMissed({ strands: [{ ...strand, missedLooksAtMs: [1, 2, 3] }], bowls: [] })).toEqual([
      1, 2, 3,
    ]);
  });
});
