import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findWallTime, readPracticeNow, type SpeedChange } from '../../../machines/practice/practiceClock';
import { speeds } from '../../../machines/practice/practiceEvent';

const noon = Date.UTC(2026, 2, 3, 12, 0);
const minuteMs = 60_000;

const change = (afterMin: number, times: SpeedChange['times']): SpeedChange => ({
  wallMs: noon + afterMin * minuteMs,
  times,
});

/** Changes of speed and the moments in between at which somebody looks; the tablet's clock may be set back. */
const aLife = fc.array(
  fc.record({
    stepMs: fc.oneof(
      fc.integer({ min: 0, max: 3_600_000 }),
      fc.integer({ min: -7_200_000, max: -1 }),
      fc.constant(0),
    ),
    times: fc.option(fc.constantFrom(...speeds), { nil: null }),
  }),
  { minLength: 1, maxLength: 40 },
);

describe('the clock of practice', () => {
  it('is the tablet’s own before anybody chose a speed', () => {
    expect(readPracticeNow([], noon)).toBe(noon);
    expect(findWallTime([], noon)).toBe(noon);
  });

  it('runs so many times as fast from each change on, and a change moves nothing', () => {
    const changes = [change(0, 1), change(5, 10), change(6, 60), change(8, 1)];
    expect(readPracticeNow(changes.slice(0, 1), noon + 5 * minuteMs)).toBe(noon + 5 * minuteMs);
    expect(readPracticeNow(changes.slice(0, 2), noon + 5 * minuteMs)).toBe(noon + 5 * minuteMs);
    expect(readPracticeNow(changes.slice(0, 2), noon + 6 * minuteMs)).toBe(noon + 15 * minuteMs);
    expect(readPracticeNow(changes.slice(0, 3), noon + 8 * minuteMs)).toBe(noon + 135 * minuteMs);
    expect(readPracticeNow(changes, noon + 9 * minuteMs)).toBe(noon + 136 * minuteMs);
  });

  it('stands while the tablet’s clock is behind its last change, and goes on from there with the next', () => {
    const changes = [change(0, 1), change(10, 10)];
    const stands = readPracticeNow(changes, noon + 10 * minuteMs);
    expect(readPracticeNow(changes, noon - 60 * minuteMs)).toBe(stands);
    const again = [...changes, change(-60, 1)];
    expect(readPracticeNow(again, noon - 59 * minuteMs)).toBe(stands + minuteMs);
  });

  it('is moved by no change of speed, goes on while the tablet’s clock does, and never falls behind its last change', () => {
    fc.assert(
      fc.property(aLife, (life) => {
        let wallMs = noon;
        let changes: readonly SpeedChange[] = [{ wallMs, times: 1 }];
        let atChange = noon;
        let shown = noon;
        for (const { stepMs, times } of life) {
          wallMs += stepMs;
          const now = readPracticeNow(changes, wallMs);
          if (stepMs >= 0) expect(now).toBeGreaterThanOrEqual(shown);
          expect(now).toBeGreaterThanOrEqual(atChange);
          if (times !== null) {
            changes = [...changes, { wallMs, times }];
            expect(readPracticeNow(changes, wallMs)).toBe(now);
            atChange = now;
          }
          shown = now;
        }
      }),
      { seed: 20261127, numRuns: 2_000 },
    );
  });

  it('finds the moment of the tablet’s clock again that each moment of practice was', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.integer({ min: 1, max: 3_600_000 }), fc.constantFrom(...speeds)), {
          minLength: 1,
          maxLength: 12,
        }),
        fc.integer({ min: 0, max: 3_600_000 }),
        (steps, laterMs) => {
          let wallMs = noon;
          const changes = steps.map(([stepMs, times]) => {
            wallMs += stepMs;
            return { wallMs, times };
          });
          const atMs = wallMs + laterMs;
          expect(findWallTime(changes, readPracticeNow(changes, atMs))).toBe(atMs);
        },
      ),
      { seed: 20261127, numRuns: 1_000 },
    );
  });
});
