import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  ASSUMED_TELLING_S,
  compareWarmth,
  countRunS,
  WARMTH_TRIAL_CAP_S,
} from '../../../shared/heat/warmthTrial';

describe('two times of a warmth trial', () => {
  it.each([
    [12, 25, { code: 'later', byS: 13 }],
    [12, 15, { code: 'later', byS: 3 }],
    [12, 14, { code: 'alike' }],
    [12, 12, { code: 'alike' }],
    [14, 12, { code: 'alike' }],
    [15, 12, { code: 'sooner', byS: 3 }],
    [12, null, { code: 'laterThanCap' }],
    [27, null, { code: 'laterThanCap' }],
    [28, null, { code: 'alike' }],
    [null, 12, { code: 'soonerThanCap' }],
    [null, 28, { code: 'alike' }],
    [null, null, { code: 'neitherFelt' }],
  ])('bare %s s, sprayed %s s', (bareS, sprayedS, told) => {
    expect(compareWarmth({ bareS, sprayedS })).toEqual(told);
  });

  const time = fc.option(fc.integer({ min: 0, max: WARMTH_TRIAL_CAP_S - 1 }));
  const mirrored = {
    later: 'sooner',
    sooner: 'later',
    laterThanCap: 'soonerThanCap',
    soonerThanCap: 'laterThanCap',
    alike: 'alike',
    neitherFelt: 'neitherFelt',
  } as const;

  it('tell the opposite when the arms are changed over', () => {
    fc.assert(
      fc.property(time, time, (one, other) => {
        const told = compareWarmth({ bareS: one, sprayedS: other });
        const back = compareWarmth({ bareS: other, sprayedS: one });
        expect(back.code).toBe(mirrored[told.code]);
      }),
    );
  });

  it('tell nothing that counting in whole seconds could have made up', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 29, noNaN: true }), fc.nat(999), fc.nat(999), (s, one, other) => {
        // The same true time, begun and stopped anywhere within a second of the station's clock.
        const count = (lag: number) => Math.floor((lag + s * 1000) / 1000) - Math.floor(lag / 1000);
        expect(compareWarmth({ bareS: count(one), sprayedS: count(other) }).code).toBe('alike');
      }),
    );
    expect(ASSUMED_TELLING_S).toBeGreaterThan(2);
  });
});

describe('a run', () => {
  it.each([
    [0, 0],
    [999, 0],
    [1_000, 1],
    [29_999, 29],
    [30_000, 30],
    [3_600_000, 30],
    [-5_000, 0],
  ])('of %d ms counts %d s', (ms, seconds) => {
    expect(countRunS(1_000_000, 1_000_000 + ms)).toBe(seconds);
  });
});
