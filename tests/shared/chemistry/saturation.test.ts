import { describe, expect, it } from 'vitest';
import { listPossibleCurves } from '../../../shared/chemistry/liftBand';
import { fitLiftCurve } from '../../../shared/chemistry/liftCurve';
import { fitSaturation, type Point } from '../../../shared/chemistry/saturation';
import { fitStraight, listRates } from '../../../shared/chemistry/saturationStart';
import { listLevelPaths } from './levelPaths';

const usualLooks = [
  [[0, 2, 7, 12], 9],
  [[0, 2, 5, 8, 11], 6],
] as const;
const toPoints = (seen: Iterable<{ readonly atMin: number; readonly level: number }>): readonly Point[] =>
  [...seen].map(({ atMin, level }) => ({ t: atMin, y: level }));

/** The best of a row of rates, and its neighbours: where the fit starts, as a strand's does. */
function findStart(points: readonly Point[]) {
  const rates = listRates(points);
  const tried = rates.flatMap((rate) => fitStraight(points, rate) ?? []);
  const best = tried.toSorted((one, other) => one.residualSum - other.residualSum)[0];
  const place = best === undefined ? -1 : rates.indexOf(best.rate);
  return { best, slower: rates[place - 1], faster: rates[place + 1] };
}

/** The least sum of squares between two rates, by golden section: another method, rate by rate. */
function searchLeast(points: readonly Point[], slower: number, faster: number): number {
  const golden = (Math.sqrt(5) - 1) / 2;
  const sumAt = (logRate: number) => fitStraight(points, Math.exp(logRate))?.residualSum ?? Number.NaN;
  let [low, high] = [Math.log(slower), Math.log(faster)];
  for (let step = 0; step < 40; step += 1) {
    const [one, other] = [high - golden * (high - low), low + golden * (high - low)];
    if (sumAt(one) < sumAt(other)) high = other;
    else low = one;
  }
  return sumAt((low + high) / 2);
}

describe('the closest curve', () => {
  it('is found where a step forth and a step back used to take turns without end', () => {
    const points = [
      { t: 0, y: 4 },
      { t: 2, y: 4 },
      { t: 7, y: 5 },
      { t: 12, y: 4.5 },
    ];
    const { best } = findStart(points);
    if (best === undefined) throw new Error('no start');
    const fitted = fitSaturation(points, best, false);
    expect(fitted).toMatchObject({ ok: true });
    expect(fitted.ok && fitted.value.residualSum).toBeCloseTo(0.26497252, 8);
  });

  it.each(usualLooks)('is found on every path of levels at %j that a curve can pass', (times, rises) => {
    let tried = 0;
    let refined = 0;
    for (const seen of listLevelPaths(times, rises)) {
      const fitted = fitLiftCurve(seen);
      if (!fitted.ok) {
        if (fitted.error === 'noCurve' && listPossibleCurves(seen).length > 0)
          throw new Error(`no curve, though one passes: ${JSON.stringify(seen)}`);
        continue;
      }
      tried += 1;
      const points = toPoints(seen);
      const { best, slower, faster } = findStart(points);
      if (best === undefined || slower === undefined || faster === undefined) continue;
      refined += 1;
      const again = fitSaturation(points, best, false);
      if (!again.ok) throw new Error(`no end: ${JSON.stringify(seen)}`);
      const least = searchLeast(points, slower, faster);
      if (!(again.value.residualSum <= least * (1 + 1e-9) + 1e-12))
        throw new Error(`${again.value.residualSum} is not the least, ${least}: ${JSON.stringify(seen)}`);
    }
    console.info(`${JSON.stringify(times)}: ${tried} paths with a curve, ${refined} of them refined`);
    expect(refined).toBeGreaterThan(500);
  });
});

describe('the row of rates', () => {
  const differ = (...times: readonly number[]): number => {
    const rates = listRates(times.map((t) => ({ t, y: 4 })));
    return (rates[1] ?? 0) / (rates[0] ?? 1) - 1;
  };
  it('has neighbours that differ by less than a fifth on usual looks, and by less than a third on any', () => {
    expect(differ(0, 2, 5, 60)).toBeLessThan(1 / 5);
    expect(differ(0, 1 / 60, 5, 60)).toBeLessThan(1 / 3);
    expect(differ(0, 1 / 60, 5, 60)).toBeGreaterThan(1 / 5);
  });
});
