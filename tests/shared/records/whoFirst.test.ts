import { describe, expect, it } from 'vitest';
import { findCall } from '../../../shared/records/call';
import type { Clock } from '../../../shared/records/clock';
import { compareWaiting } from '../../../shared/records/whoFirst';
import { makeStrandClock } from './strandClock';

const minute = 60_000;
const nowMs = Date.UTC(2026, 2, 3, 12);

/** Begun so many minutes ago, looked at so many minutes after that; for 25 minutes unless it is said. */
const begun = (
  id: string,
  kind: Clock['kind'],
  agoMin: number,
  lookedMin: readonly number[] = [],
  forMin = 25,
): Clock => {
  const startedAtMs = nowMs - agoMin * minute;
  return {
    ...makeStrandClock(startedAtMs),
    id,
    kind,
    dueAtMs: startedAtMs + forMin * minute,
    lookedAtMs: lookedMin.map((min) => startedAtMs + min * minute),
  };
};
const calls = (clocks: readonly Clock[]) =>
  clocks.map((clock) => {
    const call = findCall(clock, nowMs);
    if (call === null) throw new Error(`${clock.id} does not call`);
    return call;
  });
const sort = (clocks: readonly Clock[]) =>
  calls(clocks)
    .sort(compareWaiting)
    .map(({ clock }) => clock.id);

/** Everything that calls, in the order in which somebody has to go there. */
const order = [
  begun('head overrun', 'head', 28),
  begun('head at its end', 'head', 25),
  begun('strand overrun for long', 'strand', 50),
  begun('glass overrun', 'incompatibility', 40),
  begun('head to the basin', 'head', 23),
  begun('strand at its end', 'strand', 27),
  begun('head to be looked at', 'head', 2),
  begun('strand to be looked at', 'strand', 12),
];

describe('to whom somebody goes first', () => {
  it('is a head that is over or at its end, then the gravest, of the same a head first', () => {
    const names = order.map(({ id }) => id);
    expect(sort(order)).toEqual(names);
    expect(sort(order.toReversed())).toEqual(names);
  });

  it('is the one that waits longest for a look, whichever ends first', () => {
    const since2 = begun('waits since its minute 2, ends after 60', 'strand', 8, [], 60);
    const since6 = begun('waits for its second look, ends after 30', 'strand', 8, [4], 30);
    expect(sort([since6, since2])).toEqual([since2.id, since6.id]);
    expect(sort([since2, since6])).toEqual([since2.id, since6.id]);
  });

  it('is the one that waits longest, though its newest look fell due later', () => {
    const twice = begun('waits since 6 min, called again since 1', 'strand', 8);
    const once = begun('waits since 2 min', 'strand', 9, [2]);
    expect(calls([twice, once]).map(({ sinceMs }) => (nowMs - sinceMs) / minute)).toEqual([1, 2]);
    expect(sort([once, twice])).toEqual([twice.id, once.id]);
  });

  it('is the one that is over longest, whichever was silenced when', () => {
    const longer = { ...begun('over for 10 min', 'strand', 35), acknowledgedAtMs: nowMs - 3 * minute };
    const shorter = begun('over for 5 min', 'strand', 30);
    expect(sort([shorter, longer])).toEqual([longer.id, shorter.id]);
  });

  it('is the same, asked in whatever order', () => {
    const all = calls([...order, begun('again', 'head', 29), begun('look', 'strand', 7, [6.9])]);
    for (const one of all)
      for (const other of all) {
        expect(Math.sign(compareWaiting(one, other))).toBe(-Math.sign(compareWaiting(other, one)) + 0);
      }
  });
});
