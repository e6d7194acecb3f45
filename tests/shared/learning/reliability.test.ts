import { describe, expect, it } from 'vitest';
import type { Said } from '../../../shared/learning/brier';
import { ASSUMED_SAID_EDGES, compareSaidAndSeen } from '../../../shared/learning/reliability';
import { countShare } from '../../../shared/learning/wilson';

const say = (chance: number, hasBroken = false): Said => ({ chance, hasBroken });

describe('what was said beside what was seen', () => {
  it('is parted at the edges, with the share that broke and where it may lie', () => {
    const [low, high, ...more] = compareSaidAndSeen([say(0.1), say(0.19, true), say(0.2, true)]);
    expect(low).toEqual({ from: 0.1, to: 0.2, said: expect.closeTo(0.145, 12), seen: countShare(1, 2) });
    expect(high).toEqual({ from: 0.2, to: 0.3, said: 0.2, seen: countShare(1, 1) });
    expect(more).toEqual([]);
  });

  it('counts each strand once, those of none and certain too', () => {
    const all = [0, ...ASSUMED_SAID_EDGES, 0.049, 0.5, 0.999, 1].map((chance) => say(chance));
    const found = compareSaidAndSeen(all).reduce((sum, { seen }) => sum + seen.of, 0);
    expect(found).toBe(all.length);
  });

  it('is empty of no strands', () => {
    expect(compareSaidAndSeen([])).toEqual([]);
  });
});

describe('the share of a count', () => {
  it('is anywhere where nothing was counted, and always within its interval', () => {
    expect(countShare(0, 0)).toMatchObject({ low: 0, high: 1 });
    for (const of of [1, 7, 200]) {
      for (let count = 0; count <= of; count += 1) {
        const { low, share, high } = countShare(count, of);
        expect(0 <= low && low <= share && share <= high && high <= 1, `${count} of ${of}`).toBe(true);
      }
    }
  });
});
