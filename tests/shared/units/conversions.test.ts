import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { brand } from '../../../shared/units/brand';
import { type Centimetre, type Inch, toCentimetres, toInches } from '../../../shared/units/length';
import { type Gram, type Ounce, toGrams, toOunces } from '../../../shared/units/mass';
import { type Celsius, type Fahrenheit, toCelsius, toFahrenheit } from '../../../shared/units/temperature';
import { msPerDay, msPerHour, msPerMinute, toWeeks, weeksPerYear } from '../../../shared/units/time';
import { holds, numberBetween } from '../seeded';

const there = {
  'C to F': {
    go: (n: number) => toFahrenheit(brand<Celsius>(n)),
    back: (n: number) => toCelsius(brand<Fahrenheit>(n)),
  },
  'g to oz': { go: (n: number) => toOunces(brand<Gram>(n)), back: (n: number) => toGrams(brand<Ounce>(n)) },
  'cm to in': {
    go: (n: number) => toInches(brand<Centimetre>(n)),
    back: (n: number) => toCentimetres(brand<Inch>(n)),
  },
};

describe.each(Object.entries(there))('%s', (_name, { go, back }) => {
  it('comes back to the same value both ways, to the last bits', () => {
    holds(
      fc.property(numberBetween(-1e6, 1e6), (value) => {
        const tolerance = 1e-12 * Math.max(100, Math.abs(value));
        expect(Math.abs(back(go(value)) - value)).toBeLessThanOrEqual(tolerance);
        expect(Math.abs(go(back(value)) - value)).toBeLessThanOrEqual(tolerance);
      }),
    );
  });

  it('rises with its value', () => {
    holds(
      fc.property(numberBetween(-1e6, 1e6), numberBetween(1e-3, 1e3), (value, more) => {
        expect(go(value + more)).toBeGreaterThan(go(value));
      }),
    );
  });

  it('lets no number become one that is none, and none become a number', () => {
    expect(go(Number.NaN)).toBeNaN();
    expect(go(Number.POSITIVE_INFINITY)).toBe(Number.POSITIVE_INFINITY);
  });
});

it('meets the fixed points of each definition', () => {
  expect(toFahrenheit(brand<Celsius>(0))).toBe(32);
  expect(toFahrenheit(brand<Celsius>(100))).toBe(212);
  expect(toFahrenheit(brand<Celsius>(-40))).toBe(-40);
  expect(toCelsius(brand<Fahrenheit>(32))).toBe(0);
  expect(toGrams(brand<Ounce>(16))).toBe(453.59237);
  expect(toCentimetres(brand<Inch>(12))).toBe(30.48);
});

it('gives zero mass and zero length in either unit for zero', () => {
  expect(toOunces(brand<Gram>(0))).toBe(0);
  expect(toGrams(brand<Ounce>(0))).toBe(0);
  expect(toInches(brand<Centimetre>(0))).toBe(0);
  expect(toCentimetres(brand<Inch>(0))).toBe(0);
});

it('counts time as the clock and as the trade does', () => {
  expect(msPerMinute).toBe(60_000);
  expect(msPerHour).toBe(3_600_000);
  expect(msPerDay).toBe(86_400_000);
  expect(toWeeks(12)).toBe(weeksPerYear);
  expect(toWeeks(24)).toBe(104);
  expect(toWeeks(0)).toBe(0);
});
