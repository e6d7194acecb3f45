import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  ASSUMED_JUMP_MS,
  countDoubtMs,
  countJumpSince,
  findJump,
  isInDoubt,
} from '../../../shared/records/clockJump';

const minute = 60_000;
const hour = 60 * minute;
const startMs = Date.UTC(2026, 2, 3, 9);

describe('a jump of the tablet’s clock', () => {
  it.each([
    ['as long as both clocks counted the same', hour, hour, null],
    ['by less than a minute', ASSUMED_JUMP_MS - 1, 0, null],
    ['by a minute', ASSUMED_JUMP_MS, 0, ASSUMED_JUMP_MS],
    ['by what the steady clock did not count', 9 * hour, 20 * minute, 9 * hour - 20 * minute],
    ['backwards, which is asked elsewhere', -2 * hour, minute, null],
  ] as const)('is seen %s', (_title, wallMs, steadyMs, aheadMs) => {
    const now = { wallMs: startMs + wallMs, steadyMs: 500 + steadyMs };
    const jump = findJump({ wallMs: startMs, steadyMs: 500 }, now);
    expect(jump).toEqual(aheadMs === null ? null : { atMs: startMs + wallMs, aheadMs });
  });

  it('counts for a wait only as far as it lies inside it', () => {
    const jump = { atMs: startMs, aheadMs: 2 * hour };
    expect(countJumpSince(jump, startMs - 5 * hour)).toBe(2 * hour);
    expect(countJumpSince(jump, startMs - hour)).toBe(hour);
    expect(countJumpSince(jump, startMs)).toBe(0);
    expect(countJumpSince(jump, startMs + hour)).toBe(0);
  });

  it('never makes a wait longer, and never takes more than the whole of it when they do not overlap', () => {
    const spans = fc.array(fc.tuple(fc.nat(hour), fc.nat(hour)), { maxLength: 6 });
    fc.assert(
      fc.property(spans, fc.nat(hour), (each, beforeMs) => {
        let atMs = startMs;
        const jumps = each.map(([gapMs, aheadMs]) => {
          atMs += gapMs + aheadMs;
          return { atMs, aheadMs };
        });
        const doubtMs = countDoubtMs(jumps, startMs - beforeMs);
        expect(doubtMs).toBeGreaterThanOrEqual(0);
        expect(doubtMs).toBeLessThanOrEqual(atMs - (startMs - beforeMs));
      }),
    );
  });

  it.each([
    ['waits and was on', { seen: 'notReadYet', takenBack: null, putOnAtMs: startMs - hour }, true],
    ['was put on afterwards', { seen: 'notReadYet', takenBack: null, putOnAtMs: startMs }, false],
    ['was read', { seen: 'nothing', takenBack: null, putOnAtMs: startMs - hour }, false],
    [
      'was taken back',
      {
        seen: 'notReadYet',
        takenBack: { atMs: 1, by: 'Juno', code: 'cameOff', words: '' },
        putOnAtMs: startMs - hour,
      },
      false,
    ],
  ] as const)('puts a skin test in doubt that %s: %#', (_title, test, isDoubted) => {
    expect(isInDoubt(test, { atMs: startMs, aheadMs: hour })).toBe(isDoubted);
  });
});
