import { describe, expect, it } from 'vitest';
import { fitLiftCurve } from '../../shared/chemistry/liftCurve';
import {
  fitSaturation,
  readSaturation,
  type Saturation,
  sumSquares,
} from '../../shared/chemistry/saturation';
import { fitStraight, listRates } from '../../shared/chemistry/saturationStart';
import { checkFigure } from './check';
import { fitMisra1aFree, listMisra1a } from './misra1a';

const nist =
  'published: NIST StRD, Nonlinear Regression, Misra1a (Misra, D., Dental Research Monomolecular Adsorption, 1978)';

const certified = { rise: 238.94212918, rate: 5.5015643181e-4, residualSum: 1.2455138894e-1 };
/**
 * All three free, of which NIST certifies nothing: to forty digits by Newton on the slopes of the sum,
 * rounded here to fifteen.
 */
const free = {
  base: 0.278018766904027,
  rise: 248.592201208274,
  rate: 5.22289802812544e-4,
  residualSum: 0.0537392505370058,
};
/** Both starting points that come with the problem, and how far y is shifted. */
const starts = [
  [500, 1e-4, 0],
  [250, 5e-4, 0],
  [500, 1e-4, 5],
  [250, 5e-4, -3],
] as const;

const misra1a = listMisra1a();
const fitFrom = (by: number, start: Saturation, isBaseHeld: boolean) => {
  const fitted = fitSaturation(listMisra1a(by), start, isBaseHeld);
  if (!fitted.ok) throw new Error(`no fit from ${JSON.stringify(start)}`);
  return fitted.value;
};
/** Half a unit of the eighth significant figure. */
const eighthFigure = (value: number): number => 0.5 * 10 ** (Math.floor(Math.log10(Math.abs(value))) - 7);

describe('the lift curve’s fitter', () => {
  it.each(starts)('finds Misra1a from (%d, %d), shifted by %d, to eight figures', (rise, rate, by) => {
    const got = fitFrom(by, { base: by, rise, rate }, true);
    for (const name of ['rise', 'rate', 'residualSum'] as const) {
      const expected = certified[name];
      const input = `Misra1a from (${rise}, ${rate}), y + ${by}: ${name}`;
      checkFigure({ input, got: got[name], expected, tolerance: eighthFigure(expected), source: nist });
    }
    expect(got.base).toBe(by);
  });

  it.each(starts)(
    'finds it from (%d, %d), shifted by %d, all three free, as a strand’s are',
    (rise, rate, by) => {
      const got = fitFrom(by, { base: by, rise, rate }, false);
      for (const name of ['base', 'rise', 'rate', 'residualSum'] as const) {
        const shifted = name === 'base' ? got.base - by : got[name];
        const input = `Misra1a, free, from (${rise}, ${rate}), y + ${by}: ${name}`;
        const source = 'reckoned here, tests/evidence/misra1a.ts';
        checkFigure({
          input,
          got: shifted,
          expected: free[name],
          tolerance: eighthFigure(free[name]),
          source,
        });
      }
    },
  );

  it('is held, all three free, against sixty decimal places and another method', () => {
    const reckoned = fitMisra1aFree();
    for (const name of ['base', 'rise', 'rate', 'residualSum'] as const) {
      const tolerance = 2e-15 * free[name];
      const source = 'reckoned twice';
      checkFigure({
        input: `Misra1a, free: ${name}`,
        got: reckoned[name],
        expected: free[name],
        tolerance,
        source,
      });
    }
  });

  it.each(starts)(
    'moves only L₀ when y is shifted, from (%d, %d), by %d, all three fitted',
    (rise, rate, by) => {
      const plain = fitFrom(0, { base: 0, rise, rate }, false);
      const shifted = fitFrom(by, { base: by, rise, rate }, false);
      expect(shifted.base - by).toBeCloseTo(plain.base, 7);
      expect(shifted.rise / plain.rise).toBeCloseTo(1, 8);
      expect(shifted.rate / plain.rate).toBeCloseTo(1, 8);
      expect(shifted.residualSum / plain.residualSum).toBeCloseTo(1, 8);
      expect(plain.residualSum).toBeLessThan(certified.residualSum);
    },
  );

  it('is nowhere beaten by a search over the rate alone', () => {
    const best = fitFrom(0, { base: 0, rise: 250, rate: 5e-4 }, false);
    for (const rate of listRates(misra1a)) {
      const other = fitStraight(misra1a, rate);
      expect(other?.residualSum ?? 0, `rate ${rate}`).toBeGreaterThanOrEqual(best.residualSum * (1 - 1e-9));
    }
    // Its own count of the misses, once more by hand.
    expect(sumSquares(misra1a, best)).toBe(best.residualSum);
  });

  it('gives up with a reason where the numbers run out', () => {
    const start = { base: 0, rise: Number.NaN, rate: 1 };
    expect(fitSaturation(misra1a, start, true)).toEqual({ ok: false, error: 'noFit' });
  });
});

const see = (...pairs: readonly (readonly [number, number])[]) =>
  pairs.map(([atMin, level]) => ({ atMin, level }));
const known: Saturation = { base: 4, rise: 4, rate: 0.08 };

describe('the lift curve of a strand', () => {
  it('is found again from exact readings, in whatever order they come', () => {
    const times = [11, 0, 2, 5, 8];
    const fitted = fitLiftCurve(see(...times.map((atMin) => [atMin, readSaturation(known, atMin)] as const)));
    if (!fitted.ok) throw new Error(fitted.error);
    for (const name of ['base', 'rise', 'rate'] as const) {
      const tolerance = 1e-6;
      const source = 'exact: readings of a known curve';
      checkFigure({ input: name, got: fitted.value.likely[name], expected: known[name], tolerance, source });
    }
  });

  it('is a straight line where the strand lifts as fast as ever, and flat behind a first leap', () => {
    const straight = fitLiftCurve(see([0, 4], [2, 4.5], [5, 5.25], [8, 6], [12, 7]));
    expect(straight.ok && readSaturation(straight.value.likely, 10)).toBeCloseTo(6.5, 1);
    const leap = fitLiftCurve(see([0, 4], [2, 6], [5, 6], [8, 6]));
    expect(leap.ok && readSaturation(leap.value.likely, 20)).toBeCloseTo(6, 1);
  });

  it.each([
    ['tooFew', see([0, 4], [2, 5], [5, 6])],
    ['tooFew', see()],
    ['sameTimes', see([0, 4], [2, 5], [2.016, 5], [5, 6])],
    ['falling', see([0, 4], [2, 6], [5, 5], [8, 7])],
    ['falling', see([0, 4], [2, 6], [5, 5.5], [8, 5])],
    ['falling', see([0, 4], [2, 3])],
    ['beforeStart', see([0, 4], [-1, 5], [5, 6], [8, 6])],
    ['notALevel', see([0, 4], [2, 5], [5, 6], [8, 11])],
    ['notALevel', see([0, 4], [2, 0.5], [5, 6], [8, 7])],
    ['notALevel', see([0, 4], [2, Number.NaN], [5, 6], [8, 7])],
    ['notALevel', see([0, 4], [Number.POSITIVE_INFINITY, 5], [5, 6], [8, 7])],
    ['noLift', see([0, 4], [2, 4], [5, 4.5], [8, 4.5])],
    ['noCurve', see([0, 4], [2, 4], [5, 4], [8, 4], [11, 8])],
  ] as const)('is refused as %s: %j', (error, seen) => {
    expect(fitLiftCurve(seen)).toEqual({ ok: false, error });
  });

  it.each([
    ['a fall of half a level', see([0, 4], [2, 5.5], [5, 5], [8, 6])],
    ['two looks a second apart', see([0, 4], [2, 5], [2 + 1.01 / 60, 5], [5, 6])],
    ['a rise of a whole level', see([0, 4], [2, 4], [5, 4.5], [8, 5])],
  ] as const)('bears %s', (_what, seen) => {
    expect(fitLiftCurve(seen)).toMatchObject({ ok: true });
  });
});
