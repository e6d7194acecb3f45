import fc from 'fast-check';
import { expect, it } from 'vitest';
import { add, exactly, makeRange, multiply, type Range, scale } from '../../../shared/units/range';
import { holds, numberBetween } from '../seeded';

const anyRange = fc
  .tuple(numberBetween(0, 1e6), numberBetween(0, 1e6), numberBetween(0, 1e6))
  .map((three) => [...three].sort((a, b) => a - b))
  .map(([low = 0, typical = 0, high = 0]) => makeRange(low, typical, high));

const expectOrdered = ({ low, typical, high }: Range) => {
  expect(low).toBeGreaterThanOrEqual(0);
  expect(typical).toBeGreaterThanOrEqual(low);
  expect(high).toBeGreaterThanOrEqual(typical);
};

it('keeps low, typical and high in order through every operation', () => {
  holds(
    fc.property(anyRange, anyRange, numberBetween(0, 1e6), (a, b, factor) => {
      expectOrdered(add(a, b));
      expectOrdered(multiply(a, b));
      expectOrdered(scale(a, factor));
    }),
  );
});

it('holds every sum and product of what lies inside', () => {
  const share = numberBetween(0, 1);
  holds(
    fc.property(anyRange, anyRange, share, share, (a, b, s, t) => {
      const x = Math.min(a.low + s * (a.high - a.low), a.high);
      const y = Math.min(b.low + t * (b.high - b.low), b.high);
      const product = multiply(a, b);
      const sum = add(a, b);
      expect(x + y).toBeGreaterThanOrEqual(sum.low);
      expect(x + y).toBeLessThanOrEqual(sum.high);
      expect(x * y).toBeGreaterThanOrEqual(product.low);
      expect(x * y).toBeLessThanOrEqual(product.high);
    }),
  );
});

it('adds nothing for zero, and makes zero of anything times zero', () => {
  holds(
    fc.property(anyRange, (range) => {
      expect(add(range, exactly(0))).toEqual(range);
      expect(multiply(range, exactly(1))).toEqual(range);
      expect(multiply(range, exactly(0))).toEqual(exactly(0));
      expect(scale(range, 0)).toEqual(exactly(0));
    }),
  );
});

it('does not mind the order of two', () => {
  holds(
    fc.property(anyRange, anyRange, (a, b) => {
      expect(add(a, b)).toEqual(add(b, a));
      expect(multiply(a, b)).toEqual(multiply(b, a));
    }),
  );
});

it('throws for what cannot be a range', () => {
  expect(() => makeRange(2, 1, 3)).toThrow(RangeError);
  expect(() => makeRange(1, 3, 2)).toThrow(RangeError);
  expect(() => exactly(-1)).toThrow(RangeError);
  expect(() => exactly(Number.NaN)).toThrow(RangeError);
  expect(() => scale(exactly(1), -1)).toThrow(RangeError);
});
