import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { listPossibleCurves, readBandAt } from '../../../shared/chemistry/liftBand';
import { fitLiftCurve } from '../../../shared/chemistry/liftCurve';
import { readSaturation } from '../../../shared/chemistry/saturation';
import { holds, numberBetween } from '../seeded';

const times = [0, 2, 5, 8, 11];
const rounding = 1e-6;

describe('the curves that it could be as well', () => {
  it('pass every reading within half a level, and none of them falls', () => {
    const seen = [4, 5, 5.5, 6.5, 6.5].map((level, index) => ({ atMin: times[index] ?? 0, level }));
    const curves = listPossibleCurves(seen);
    expect(curves.length).toBeGreaterThan(20);
    for (const curve of curves) {
      expect(curve.rise).toBeGreaterThanOrEqual(0);
      for (const { atMin, level } of seen)
        expect(Math.abs(readSaturation(curve, atMin) - level)).toBeLessThan(0.5 + rounding);
    }
    // The outermost ones: at every look some curve stands half a level off, or the others keep it in.
    const { low, high } = readBandAt(curves, 0);
    expect([low, high]).toEqual([3.5, 4.5]);
  });

  it('are none where nothing passes them all', () => {
    const seen = [4, 4, 4, 4, 8].map((level, index) => ({ atMin: times[index] ?? 0, level }));
    expect(listPossibleCurves(seen)).toEqual([]);
  });

  it('enclose the true one whenever each reading is within half a level of it', () => {
    const errors = fc.array(numberBetween(-0.5, 0.5), { minLength: 5, maxLength: 5 });
    let tried = 0;
    holds(
      fc.property(
        numberBetween(3, 5),
        numberBetween(2, 4.5),
        numberBetween(3, 15),
        errors,
        (base, rise, half, off) => {
          const truth = { base, rise, rate: Math.LN2 / half };
          const seen = times.map((atMin, index) => ({
            atMin,
            level: readSaturation(truth, atMin) + (off[index] ?? 0),
          }));
          const curve = fitLiftCurve(seen);
          if (!curve.ok) return;
          tried += 1;
          // Rates are tried in a row: between two of them a sliver of a twentieth of a level may be left out.
          for (const atMin of [...times, 15, 20, 25, 40]) {
            const { low, high } = readBandAt(curve.value.possible, atMin);
            const level = readSaturation(truth, atMin);
            expect(level).toBeGreaterThan(low - 0.05);
            expect(level).toBeLessThan(high + 0.05);
          }
        },
      ),
    );
    expect(tried).toBeGreaterThan(250);
  });
});
