import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Clock, endClocks, readClock, shiftClock, WARN_BEFORE_MS } from '../../../shared/records/clock';
import { holds } from '../seeded';
import { makeStrandClock } from './strandClock';

const second = 1000;
const minute = 60 * second;
const startedAtMs = Date.UTC(2026, 2, 3, 9, 0);

/** A strand for 25 minutes: looks at 2, 5, 8 … 23 (common practice, no source), at most 45 (the maker's limit). */
const strand: Clock = {
  ...makeStrandClock(startedAtMs),
  looks: { firstAfterMs: 2 * minute, everyMs: 3 * minute },
};
const unlooked: Clock = { ...strand, looks: null };
const lookedAt = (...minutes: readonly number[]): Clock => ({
  ...strand,
  lookedAtMs: minutes.map((at) => startedAtMs + at * minute),
});
const at = (clock: Clock, minutes: number, moreMs = 0) =>
  readClock(clock, startedAtMs + minutes * minute + moreMs);

describe('a running clock', () => {
  it('runs from its start with the whole time left', () =>
    expect(at(strand, 0)).toEqual({
      phase: 'running',
      remainingMs: 25 * minute,
      nextLookAtMs: startedAtMs + 2 * minute,
      missedLooks: 0,
    }));

  it('keeps the deadline when the page was asleep', () => {
    const before = at(strand, 1);
    const after = at(strand, 19);
    expect(before.remainingMs - after.remainingMs).toBe(18 * minute);
    expect(after).toEqual(readClock({ ...strand }, startedAtMs + 19 * minute));
  });

  it('asks for the first look at two minutes, not a millisecond before (common practice, no source)', () => {
    expect(at(strand, 2, -1)).toMatchObject({ phase: 'running', missedLooks: 0 });
    expect(at(strand, 2)).toMatchObject({ phase: 'lookDue', nextLookAtMs: startedAtMs + 2 * minute });
  });

  it('is quiet again once somebody looked, until the next look begins', () => {
    const clock = lookedAt(2.5);
    expect(at(clock, 3)).toMatchObject({ phase: 'running', nextLookAtMs: startedAtMs + 5 * minute });
    expect(at(clock, 5, -1)).toMatchObject({ phase: 'running', missedLooks: 0 });
    expect(at(clock, 5)).toMatchObject({ phase: 'lookDue', missedLooks: 0 });
  });

  it('keeps a look open to the last millisecond of its window', () => {
    const open = at(lookedAt(2), 8, -1);
    expect(open).toMatchObject({ phase: 'lookDue', missedLooks: 0, nextLookAtMs: startedAtMs + 5 * minute });
    expect(at(lookedAt(2), 8)).toMatchObject({ phase: 'lookDue', missedLooks: 1 });
  });

  it('counts a look for the window it was made in: on the edge it is the later one', () => {
    const onTheEdge = lookedAt(5);
    expect(at(onTheEdge, 6)).toMatchObject({ phase: 'running', missedLooks: 1 });
    const before: Clock = { ...strand, lookedAtMs: [startedAtMs + 5 * minute - 1] };
    expect(at(before, 6)).toMatchObject({ phase: 'lookDue', missedLooks: 0 });
  });

  it('does not take a look before the first window, or two in one, for more than one', () => {
    expect(at(lookedAt(1), 2)).toMatchObject({ phase: 'lookDue' });
    expect(at(lookedAt(2, 3, 4), 11)).toMatchObject({ missedLooks: 2 });
  });

  it('warns from exactly two minutes before the end (common practice, no source)', () => {
    expect(WARN_BEFORE_MS).toBe(2 * minute);
    expect(at(unlooked, 23, -1)).toMatchObject({ phase: 'running', remainingMs: 2 * minute + 1 });
    expect(at(unlooked, 23)).toMatchObject({ phase: 'nearlyDue', remainingMs: 2 * minute });
    expect(at(unlooked, 25, -1)).toMatchObject({ phase: 'nearlyDue', remainingMs: 1 });
  });

  it('is over from the very millisecond it is due, and says by how much', () => {
    expect(at(strand, 25)).toMatchObject({ phase: 'over', remainingMs: 0, nextLookAtMs: null });
    expect(at(strand, 31)).toMatchObject({ phase: 'over', remainingMs: -6 * minute });
  });

  it('begins no look at the moment it is due', () => {
    const short: Clock = { ...strand, dueAtMs: startedAtMs + 5 * minute };
    expect(at(short, 2.9)).toMatchObject({ phase: 'lookDue', missedLooks: 0 });
    expect(at(short, 3)).toMatchObject({ phase: 'nearlyDue', missedLooks: 0 });
    expect(at(short, 5)).toMatchObject({ phase: 'over', missedLooks: 1 });
    expect(at(short, 60)).toMatchObject({ missedLooks: 1 });
  });

  it('still has missed its last look when somebody looks after the end', () => {
    const looks = [2, 5, 8, 11, 14, 17, 20];
    expect(at(lookedAt(...looks), 26)).toMatchObject({ missedLooks: 1 });
    expect(at(lookedAt(...looks, 25.5), 26)).toMatchObject({ missedLooks: 1 });
    expect(at(lookedAt(...looks, 24.5), 26)).toMatchObject({ missedLooks: 0 });
  });

  it('asks nobody to look where there is nothing to look at', () =>
    expect(at(unlooked, 10)).toEqual({
      phase: 'running',
      remainingMs: 15 * minute,
      nextLookAtMs: null,
      missedLooks: 0,
    }));
});

describe('a clock that ended', () => {
  const [ended] = endClocks([strand], startedAtMs + 9 * minute) as [Clock];

  it('stays as it was when it ended, however late it is read', () => {
    expect(at(ended, 9)).toEqual(at(ended, 500));
    expect(at(ended, 500)).toMatchObject({ phase: 'ended', remainingMs: 16 * minute, missedLooks: 2 });
  });

  it('keeps its first end', () => expect(endClocks([ended], startedAtMs + 20 * minute)).toEqual([ended]));

  it('ends alone when only it was meant', () => {
    const other: Clock = { ...strand, id: 'strand-lengths-2' };
    const after = endClocks([strand, other], startedAtMs + minute, ({ id }) => id === strand.id);
    expect(after.map(({ endedAtMs }) => endedAtMs)).toEqual([startedAtMs + minute, null]);
  });

  it('is not moved by a change of the tablet’s own clock', () =>
    expect(shiftClock(ended, 3 * minute)).toEqual(ended));
});

describe('a clock that is extended or moved', () => {
  it('runs again when it was over and gets five minutes more', () => {
    const longer: Clock = { ...strand, dueAtMs: strand.dueAtMs + 5 * minute };
    expect(at(strand, 26).phase).toBe('over');
    expect(at(longer, 25.5)).toMatchObject({
      phase: 'lookDue',
      remainingMs: 4.5 * minute,
      nextLookAtMs: startedAtMs + 23 * minute,
    });
    expect(at(longer, 25.5).missedLooks).toBe(at(strand, 25, -1).missedLooks);
  });

  it('says the same before and after the tablet’s clock was moved, for any shift and any moment', () =>
    holds(
      fc.property(
        fc.integer({ min: -864e6, max: 864e6 }),
        fc.integer({ min: 0, max: 60 * minute }),
        fc.array(fc.integer({ min: 0, max: 60 * minute }), { maxLength: 6 }),
        (shiftMs, onMs, looks) => {
          const clock = { ...strand, lookedAtMs: looks.map((lookMs) => startedAtMs + lookMs) };
          const before = readClock(clock, startedAtMs + onMs);
          const after = readClock(shiftClock(clock, shiftMs), startedAtMs + onMs + shiftMs);
          const next = before.nextLookAtMs === null ? null : before.nextLookAtMs + shiftMs;
          expect(after).toEqual({ ...before, nextLookAtMs: next });
        },
      ),
    ));

  it('moves whole: what was acknowledged before stays before', () => {
    const heard: Clock = { ...strand, acknowledgedAtMs: startedAtMs + minute };
    expect(shiftClock(heard, 3 * minute).acknowledgedAtMs).toBe(startedAtMs + 4 * minute);
    expect(shiftClock(strand, 3 * minute).acknowledgedAtMs).toBeNull();
  });
});

/** Any sensible clock, its looks in order. */
const anyClock = fc
  .record({
    lastsMin: fc.integer({ min: 1, max: 60 }),
    everyMin: fc.constantFrom(3, 5),
    looks: fc.array(fc.integer({ min: 0, max: 3600 }), { maxLength: 8 }),
  })
  .map(
    ({ lastsMin, everyMin, looks }): Clock => ({
      ...strand,
      looks: { firstAfterMs: 2 * minute, everyMs: everyMin * minute },
      dueAtMs: startedAtMs + lastsMin * minute,
      lookedAtMs: looks.sort((one, other) => one - other).map((lookS) => startedAtMs + lookS * second),
    }),
  );

describe('any clock at any moment', () => {
  it('says after a fresh start and one reading what it says when every second was read', () =>
    holds(
      fc.property(anyClock, fc.integer({ min: 0, max: 4000 }), (clock, untilS) => {
        const kept = JSON.stringify(clock);
        const lookedBy = (nowMs: number) => clock.lookedAtMs.filter((lookMs) => lookMs <= nowMs);
        const faults: string[] = [];
        let last = readClock({ ...clock, lookedAtMs: lookedBy(startedAtMs) }, startedAtMs);
        for (let nowMs = startedAtMs + second; nowMs <= startedAtMs + untilS * second; nowMs += second) {
          const next = readClock({ ...clock, lookedAtMs: lookedBy(nowMs) }, nowMs);
          if (next.remainingMs !== last.remainingMs - second) faults.push(`skipped a second at ${nowMs}`);
          if (next.missedLooks < last.missedLooks) faults.push(`forgot a missed look at ${nowMs}`);
          if (last.phase === 'over' && next.phase !== 'over') faults.push(`came back at ${nowMs}`);
          last = next;
        }
        expect(faults).toEqual([]);
        const untilMs = startedAtMs + untilS * second;
        const fresh = JSON.parse(JSON.stringify({ ...clock, lookedAtMs: lookedBy(untilMs) })) as Clock;
        expect(readClock(fresh, untilMs)).toEqual(last);
        expect(JSON.stringify(clock)).toBe(kept);
      }),
      60,
    ));

  it('never names a next look that has passed while it says it is running, and one that has when a look is due', () =>
    holds(
      fc.property(anyClock, fc.integer({ min: 0, max: 4000 }), (clock, untilS) => {
        const nowMs = startedAtMs + untilS * second;
        const { phase, nextLookAtMs } = readClock(clock, nowMs);
        fc.pre(nextLookAtMs !== null);
        if (phase === 'lookDue') expect(nextLookAtMs).toBeLessThanOrEqual(nowMs);
        if (phase === 'running') expect(nextLookAtMs).toBeGreaterThan(nowMs);
        expect(nextLookAtMs).toBeLessThan(clock.dueAtMs);
      }),
    ));
});
