import fc from 'fast-check';
import { expect, it } from 'vitest';
import {
  computeExactPercent,
  computeExactVolumes,
  isWithinCeiling,
  LEGAL_CEILING_PERCENT,
  type PeroxidePercent,
  toPercent,
  toVolumes,
  type Volume,
} from '../../../shared/chemistry/peroxide';
import { brand } from '../../../shared/units/brand';
import { holds, numberBetween } from '../seeded';

const percent = (value: number) => brand<PeroxidePercent>(value);
const volume = (value: number) => brand<Volume>(value);

it('comes back to the same strength both ways, as labelled and as chemistry has it', () => {
  holds(
    fc.property(numberBetween(0, 100), (value) => {
      expect(toPercent(toVolumes(percent(value)))).toBeCloseTo(value, 10);
      expect(toVolumes(toPercent(volume(value)))).toBeCloseTo(value, 10);
      expect(computeExactPercent(computeExactVolumes(percent(value)))).toBeCloseTo(value, 10);
    }),
  );
});

it('gives zero volumes for zero per cent, and rises with the per cent', () => {
  expect(toVolumes(percent(0))).toBe(0);
  expect(computeExactVolumes(percent(0))).toBe(0);
  holds(
    fc.property(numberBetween(0, 50), numberBetween(0.001, 50), (value, more) => {
      expect(toVolumes(percent(value + more))).toBeGreaterThan(toVolumes(percent(value)));
      expect(computeExactVolumes(percent(value + more))).toBeGreaterThan(computeExactVolumes(percent(value)));
    }),
  );
});

it('allows exactly what is a strength from none to the ceiling', () => {
  holds(
    fc.property(fc.double(), (value) => {
      expect(isWithinCeiling(percent(value))).toBe(value >= 0 && value <= LEGAL_CEILING_PERCENT);
    }),
  );
});
