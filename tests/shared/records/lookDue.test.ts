import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Clock, readClock } from '../../../shared/records/clock';
import { findLookDueSinceMs } from '../../../shared/records/lookDue';
import { holds, numberBetween } from '../seeded';
import { makeStrandClock } from './strandClock';

const minute = 60_000;
const startedAtMs = Date.UTC(2026, 2, 3, 12);

const clock = makeStrandClock(startedAtMs);

const looked = (...afterMin: readonly number[]): Clock => ({
  ...clock,
  lookedAtMs: afterMin.map((after) => startedAtMs + after * minute),
});
const sinceMin = (of: Clock, nowMin: number): number | null => {
  const sinceMs = findLookDueSinceMs(of, startedAtMs + nowMin * minute);
  return sinceMs === null ? null : (sinceMs - startedAtMs) / minute;
};

describe('a look that is due', () => {
  it.each([
    ['before the first look', clock, 1.99, null],
    ['at the first look', clock, 2, 2],
    ['with two looks missed since', clock, 13, 2],
    ['after a look in its interval', looked(3), 6.99, null],
    ['with the interval after it', looked(3), 7, 7],
    ['after a look at the very moment it fell due', looked(7), 7, null],
    ['after a look too early for any', looked(1), 2, 2],
    ['once the end has come', clock, 25, null],
    ['beyond the last look before the end', looked(22), 24.9, null],
  ] as const)('%s', (_title, of, nowMin, expected) => {
    expect(sinceMin(of, nowMin)).toBe(expected);
  });

  it('is none where nobody looks, and none once it is off', () => {
    expect(sinceMin({ ...clock, looks: null }, 10)).toBeNull();
    expect(sinceMin({ ...clock, endedAtMs: startedAtMs + minute }, 10)).toBeNull();
  });

  it('is due exactly while the clock says that a look is', () => {
    holds(
      fc.property(fc.array(numberBetween(0, 30), { maxLength: 6 }), numberBetween(0, 30), (looks, nowMin) => {
        const made = looked(...looks.filter((after) => after <= nowMin).sort((one, other) => one - other));
        const nowMs = startedAtMs + nowMin * minute;
        const { nextLookAtMs } = readClock(made, nowMs);
        const isDue = nextLookAtMs !== null && nextLookAtMs <= nowMs;
        const sinceMs = findLookDueSinceMs(made, nowMs);
        expect(sinceMs !== null).toBe(isDue);
        if (sinceMs !== null && nextLookAtMs !== null) expect(sinceMs).toBeLessThanOrEqual(nextLookAtMs);
      }),
    );
  });
});
