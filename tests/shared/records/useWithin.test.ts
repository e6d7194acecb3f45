import { describe, expect, it } from 'vitest';
import { defaultSettings } from '../../../shared/records/settings';
import { ASSUMED_USE_WITHIN_MIN, findUseByMs, findUseWithinMin } from '../../../shared/records/useWithin';

const settings = {
  ...defaultSettings,
  shelf: [
    { name: 'Sandbar powder', kind: 'lightener' as const, useWithinMin: 45 },
    { name: 'Sandbar cream', kind: 'colour' as const },
  ],
};

describe('use by', () => {
  it('is the maker’s figure of the line, however the line is typed', () => {
    expect(findUseWithinMin(' sandbar  POWDER', settings)).toBe(45);
    expect(findUseByMs({ atMs: 1000, line: 'Sandbar powder' }, settings)).toBe(1000 + 45 * 60_000);
  });

  it('is the short end of what makers say (ASSUMED) where the shelf names no figure, or not the line', () => {
    for (const line of ['Sandbar cream', 'Gravel gloss']) {
      expect(findUseWithinMin(line, settings), line).toBe(ASSUMED_USE_WITHIN_MIN);
    }
    expect(ASSUMED_USE_WITHIN_MIN).toBe(30);
  });

  it('was within the hour for a model before 4, so that its logs fold; the maker’s figure never changed', () => {
    expect([3, 4].map((model) => findUseWithinMin('Gravel gloss', settings, model))).toEqual([60, 30]);
    expect([3, 4].map((model) => findUseWithinMin('Sandbar powder', settings, model))).toEqual([45, 45]);
  });

  it('counts from when developer met colour, where that was before the bowl was called weighed', () => {
    const bowl = { atMs: 3_600_000, line: 'Sandbar powder', mixedMinAgo: 20 };
    expect(findUseByMs(bowl, settings)).toBe(3_600_000 + (45 - 20) * 60_000);
  });
});
