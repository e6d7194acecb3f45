import { describe, expect, it } from 'vitest';
import {
  ASSUMED_TOUCH_UP_CM,
  type Bleach,
  findBleachReach,
  findEndsFrom,
} from '../../../shared/chemistry/bleach';
import { exactly, makeRange, type Range } from '../../../shared/units/range';

const growth: Range = exactly(0.25);
const told: Bleach = { weeksAgo: exactly(20), reach: 'all', sureness: 'told' };
const reachOf = (bleach: Partial<Bleach>, account: 'least' | 'typical' | 'most' = 'typical', of = growth) =>
  findBleachReach({ ...told, ...bleach }, of, 30, account);

describe('the hair that a bleach met', () => {
  it('begins where the hair has grown to that was at the scalp then', () => {
    const everywhere = { fromCm: 5, toCm: Number.POSITIVE_INFINITY, weeksAgo: 20 };
    for (const account of ['least', 'typical', 'most'] as const) {
      expect(reachOf({}, account)).toEqual(everywhere);
    }
  });

  it('on new growth only ends a touch-up further, on ends only begins where they do', () => {
    expect(reachOf({ reach: 'roots' })).toMatchObject({ fromCm: 5, toCm: 5 + ASSUMED_TOUCH_UP_CM });
    expect(reachOf({ reach: 'ends' })).toMatchObject({ fromCm: 30, toCm: Number.POSITIVE_INFINITY });
    expect(reachOf({ reach: 'ends', weeksAgo: exactly(160) })).toMatchObject({ fromCm: 40 });
  });

  it('is none for certain, and all of it at the most, where nobody knows where it went', () => {
    expect(reachOf({ reach: 'unknown' }, 'least')).toBeNull();
    expect(reachOf({ reach: 'unknown' }, 'typical')).toMatchObject({ fromCm: 5 });
    expect(reachOf({ reach: 'unknown' }, 'most')).toMatchObject({ fromCm: 5 });
  });

  it('counts as surely as it was told', () => {
    const countedIn = (sureness: Bleach['sureness']) =>
      (['least', 'typical', 'most'] as const).filter((account) => reachOf({ sureness }, account) !== null);
    expect(countedIn('told')).toEqual(['least', 'typical', 'most']);
    expect(countedIn('likely')).toEqual(['typical', 'most']);
    expect(countedIn('possible')).toEqual(['most']);
  });

  it('shrinks at the least and widens at the most where time or growth is not known', () => {
    const open = { weeksAgo: makeRange(10, 20, 40), reach: 'roots' } as const;
    const of: Range = makeRange(0.2, 0.25, 0.3);
    expect(reachOf(open, 'most', of)).toEqual({ fromCm: 2, toCm: 12 + ASSUMED_TOUCH_UP_CM, weeksAgo: 40 });
    expect(reachOf(open, 'typical', of)).toEqual({ fromCm: 5, toCm: 5 + ASSUMED_TOUCH_UP_CM, weeksAgo: 20 });
    expect(reachOf(open, 'least', of)).toBeNull();
  });

  it('has its ends on the last ten centimetres, or a third of short hair', () => {
    expect(findEndsFrom(60)).toBe(50);
    expect(findEndsFrom(30)).toBe(20);
    expect(findEndsFrom(12)).toBe(8);
  });
});
