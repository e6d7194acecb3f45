import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  computeExtensionPercent,
  computeReturnPercent,
  judgeStretch,
  type StretchReturn,
  stretchVerdicts,
} from '../../../shared/hair/stretch';
import { holds, numberBetween } from '../seeded';

const worseAndWorse: readonly StretchReturn[] = ['springsBack', 'staysLong', 'snaps'];
const odd = [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];

describe('a measured stretch', () => {
  it('is refused where the ruler was misread, and not for being long', () => {
    expect(computeExtensionPercent(100, 99)).toEqual({ ok: false, error: 'shorterThanRest' });
    expect(computeExtensionPercent(0, 10)).toEqual({ ok: false, error: 'notALength' });
    expect(computeExtensionPercent(-100, 130)).toEqual({ ok: false, error: 'notALength' });
    expect(computeExtensionPercent(100, 100)).toEqual({ ok: true, value: 0 });
    expect(computeExtensionPercent(100, 250)).toEqual({ ok: true, value: 150 });
    for (const figure of odd) {
      expect(computeExtensionPercent(figure, 130)).toEqual({ ok: false, error: 'notFinite' });
      expect(computeExtensionPercent(100, figure)).toEqual({ ok: false, error: 'notFinite' });
    }
  });

  it('does not depend on the unit of the ruler', () => {
    holds(
      fc.property(
        numberBetween(1, 500),
        numberBetween(0, 3),
        numberBetween(0.01, 100),
        (rest, by, factor) => {
          const mm = computeExtensionPercent(rest, rest * (1 + by));
          const other = computeExtensionPercent(
            rest * factor,
            Math.max(rest * (1 + by) * factor, rest * factor),
          );
          if (!mm.ok || !other.ok) throw new Error('a stretch was refused');
          expect(other.value).toBeCloseTo(mm.value, 8);
        },
      ),
    );
  });
});

describe('the return', () => {
  it('is all, half or none of the stretch', () => {
    expect(computeReturnPercent(100, 120, 100)).toEqual({ ok: true, value: 100 });
    expect(computeReturnPercent(100, 120, 110)).toEqual({ ok: true, value: 50 });
    expect(computeReturnPercent(100, 120, 120)).toEqual({ ok: true, value: 0 });
  });

  it('counts a springing curl as all, and hair that ran on as none', () => {
    expect(computeReturnPercent(100, 120, 90)).toEqual({ ok: true, value: 100 });
    expect(computeReturnPercent(100, 120, 130)).toEqual({ ok: true, value: 0 });
  });

  it('is refused where nothing was pulled', () => {
    expect(computeReturnPercent(100, 100, 100)).toEqual({ ok: false, error: 'notPulled' });
    expect(computeReturnPercent(100, 90, 100)).toEqual({ ok: false, error: 'notPulled' });
    expect(computeReturnPercent(100, 120, 0)).toEqual({ ok: false, error: 'notALength' });
    for (const figure of odd) {
      expect(computeReturnPercent(100, 120, figure)).toEqual({ ok: false, error: 'notFinite' });
    }
  });
});

describe('the verdict', () => {
  it('needs no ruler', () => {
    expect(judgeStretch({ returned: 'springsBack' })).toEqual({ ok: true, value: 'sound' });
    expect(judgeStretch({ returned: 'staysLong' })).toEqual({ ok: true, value: 'slow' });
    expect(judgeStretch({ returned: 'snaps' })).toEqual({ ok: true, value: 'broken' });
  });

  it('is given for every observed stretch, and refused only for a figure that is none', () => {
    holds(
      fc.property(
        fc.constantFrom(...worseAndWorse),
        numberBetween(0, 1e300),
        (returned, extensionPercent) => {
          expect(judgeStretch({ returned, extensionPercent }).ok).toBe(true);
        },
      ),
    );
    for (const returned of worseAndWorse) {
      for (const extensionPercent of odd) {
        expect(judgeStretch({ returned, extensionPercent })).toEqual({ ok: false, error: 'notFinite' });
      }
      expect(judgeStretch({ returned, extensionPercent: -1 })).toEqual({
        ok: false,
        error: 'shorterThanRest',
      });
    }
  });

  it('is never better for a worse return or a longer stretch', () => {
    const rank = (returned: StretchReturn, extensionPercent: number) => {
      const verdict = judgeStretch({ returned, extensionPercent });
      if (!verdict.ok) throw new Error('an observed stretch was refused');
      return stretchVerdicts.indexOf(verdict.value);
    };
    const place = fc.nat({ max: worseAndWorse.length - 1 });
    holds(
      fc.property(place, place, numberBetween(0, 80), numberBetween(0, 80), (a, b, extension, more) => {
        const better = worseAndWorse[Math.min(a, b)] ?? 'springsBack';
        const worse = worseAndWorse[Math.max(a, b)] ?? 'snaps';
        expect(rank(worse, extension + more)).toBeGreaterThanOrEqual(rank(better, extension));
      }),
    );
  });
});
