import { describe, expect, it } from 'vitest';
import {
  ASSUMED_TOUCH_UP_CM,
  type Bleach,
  findBleachReach,
  findEndsFrom,
} from '../../../shared/chemistry/bleach';
import { exactly, makeRange, type Range } from '../../../shared/units/range';

const growth: Range = exactly(0.25);
const strand = { endsFromCm: 30, tipCm: 40 };
const told: Bleach = { weeksAgo: exactly(20), place: 'all', sureness: 'told' };
const reachOf = (bleach: Partial<Bleach>, account: 'least' | 'typical' | 'most' = 'typical', of = growth) =>
  findBleachReach({ ...told, ...bleach }, of, strand, account);
const all = ['least', 'typical', 'most'] as const;
const fromOf = (bleach: Partial<Bleach>, of = growth) =>
  all.map((account) => reachOf(bleach, account, of)?.fromCm);

describe('the hair that a bleach met', () => {
  it('begins where the hair has grown to that was at the scalp then', () => {
    for (const account of all)
      expect(reachOf({}, account)).toEqual({ fromCm: 5, toCm: Number.POSITIVE_INFINITY, weeksAgo: 20 });
  });

  it('on ends only begins where they do, or further out where they had not grown yet', () => {
    expect(fromOf({ place: 'ends' })).toEqual([30, 30, 30]);
    expect(reachOf({ place: 'ends', weeksAgo: exactly(140) })?.fromCm).toBe(35);
  });

  it('on each new growth is all hair older than the last time, bleached when it was new', () => {
    expect(fromOf({ place: 'newGrowth' })).toEqual([5, 5, 5]);
    expect(reachOf({ place: 'newGrowth' }, 'typical')?.weeksAgo).toBe(Number.POSITIVE_INFINITY);
    expect(reachOf({ place: 'newGrowth' }, 'least')?.weeksAgo).toBe(20);
  });

  it('on the new growth of one time is a band today, which nobody can place for certain without its time', () => {
    expect(reachOf({ place: 'band' })).toEqual({ fromCm: 5, toCm: 5 + ASSUMED_TOUCH_UP_CM, weeksAgo: 20 });
    const open = { place: 'band', weeksAgo: makeRange(10, 20, 40) } as const;
    expect(reachOf(open, 'most')).toEqual({ fromCm: 2.5, toCm: 10 + ASSUMED_TOUCH_UP_CM, weeksAgo: 40 });
    expect(reachOf(open, 'least')).toBeNull();
  });

  it('told of the oldest ends lies at the tip for certain, most likely on the ends, at the most everywhere', () => {
    expect(fromOf({ place: 'oldest' })).toEqual([40, 30, 5]);
  });

  it('lies at the tip for certain, and most likely everywhere, where nobody knows where it went', () => {
    expect(fromOf({ place: 'unknown' })).toEqual([40, 5, 5]);
  });

  it('told as having been there never lies beyond the tip, whatever is assumed of its time', () => {
    expect(fromOf({ weeksAgo: makeRange(20, 400, 900) })).toEqual([40, 40, 5]);
    expect(fromOf({ weeksAgo: makeRange(20, 400, 900), sureness: 'likely' })).toEqual([undefined, 100, 5]);
  });

  it('counts as surely as it was told', () => {
    const countedIn = (sureness: Bleach['sureness']) =>
      all.filter((account) => reachOf({ sureness }, account) !== null);
    expect(countedIn('told')).toEqual(['least', 'typical', 'most']);
    expect(countedIn('likely')).toEqual(['typical', 'most']);
    expect(countedIn('possible')).toEqual(['most']);
  });

  it('shrinks at the least and widens at the most where time or growth is not known', () => {
    const open = { weeksAgo: makeRange(10, 20, 40) };
    const of: Range = makeRange(0.2, 0.25, 0.3);
    expect(reachOf(open, 'least', of)).toMatchObject({ fromCm: 12, weeksAgo: 10 });
    expect(reachOf(open, 'typical', of)).toEqual({ fromCm: 5, toCm: Number.POSITIVE_INFINITY, weeksAgo: 20 });
    expect(reachOf(open, 'most', of)).toMatchObject({ fromCm: 2, weeksAgo: 40 });
  });

  it('has its ends on the last ten centimetres, or a third of short hair', () => {
    expect(findEndsFrom(60)).toBe(50);
    expect(findEndsFrom(30)).toBe(20);
    expect(findEndsFrom(12)).toBe(8);
  });
});
