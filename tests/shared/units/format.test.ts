import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { brand } from '../../../shared/units/brand';
import {
  formatCountdown,
  formatElapsed,
  formatInchesBeside,
  formatLength,
  formatMass,
  formatPercent,
  formatQuantity,
  formatRange,
  formatRuler,
  formatTemperature,
} from '../../../shared/units/format';
import type { Centimetre } from '../../../shared/units/length';
import type { Gram } from '../../../shared/units/mass';
import type { Quantity, UnitSettings } from '../../../shared/units/quantity';
import { makeRange } from '../../../shared/units/range';
import type { Celsius } from '../../../shared/units/temperature';
import { holds } from '../seeded';

const metric: UnitSettings = { temperature: 'C', mass: 'g', length: 'cm' };
const customary: UnitSettings = { temperature: 'F', mass: 'oz', length: 'in' };
const quantities: readonly Quantity[] = [
  'temperature',
  'mass',
  'length',
  'millimetres',
  'percent',
  'volume',
  'minutes',
  'seconds',
  'count',
  'level',
  'parts',
];

describe('a quantity', () => {
  it('is shown in the station’s unit with its symbol', () => {
    expect(formatTemperature(brand<Celsius>(205), metric, 'en')).toBe('205\u00a0°C');
    expect(formatTemperature(brand<Celsius>(205), customary, 'en')).toBe('401\u00a0°F');
    expect(formatMass(brand<Gram>(37.5), metric, 'en')).toBe('37.5\u00a0g');
    expect(formatMass(brand<Gram>(28.349523125), customary, 'en')).toBe('1\u00a0oz');
    expect(formatLength(brand<Centimetre>(2.54), customary, 'en')).toBe('1\u00a0in');
    expect(formatLength(brand<Centimetre>(2.54), metric, 'en')).toBe('2.5\u00a0cm');
    expect(formatPercent(12, metric, 'en')).toBe('12\u00a0%');
    expect(formatQuantity(40, 'volume', metric, 'en')).toBe('40\u00a0vol');
    expect(formatQuantity(7.5, 'level', metric, 'en')).toBe('7.5');
  });

  it('takes the decimal mark of the language and sets no thousands mark', () => {
    expect(formatMass(brand<Gram>(1037.5), metric, 'de')).toBe('1037,5\u00a0g');
    expect(formatMass(brand<Gram>(1037.5), metric, 'en')).toBe('1037.5\u00a0g');
  });

  it('keeps Latin digits in every language', () => {
    expect(formatPercent(12, metric, 'ar-EG')).toMatch(/12/);
    expect(formatPercent(12, metric, 'hi-u-nu-deva')).toMatch(/12/);
  });

  it('rounds halves away from zero', () => {
    expect(formatTemperature(brand<Celsius>(204.5), metric, 'en')).toBe('205\u00a0°C');
    expect(formatTemperature(brand<Celsius>(204.4), metric, 'en')).toBe('204\u00a0°C');
    expect(formatTemperature(brand<Celsius>(-2.5), metric, 'en')).toBe('-3\u00a0°C');
    expect(formatPercent(0.25, metric, 'en')).toBe('0.3\u00a0%');
  });

  it('is never "-0" and never "NaN"', () => {
    expect(formatTemperature(brand<Celsius>(-0.4), metric, 'en')).toBe('0\u00a0°C');
    expect(formatMass(brand<Gram>(-0), metric, 'en')).toBe('0\u00a0g');
    expect(formatMass(brand<Gram>(Number.NaN), metric, 'en')).toBe('–\u00a0g');
    expect(formatPercent(Number.POSITIVE_INFINITY, metric, 'en')).toBe('–\u00a0%');
    const anyQuantity = fc.constantFrom(...quantities);
    holds(
      fc.property(fc.double(), anyQuantity, fc.constantFrom(metric, customary), (value, quantity, units) => {
        expect(formatQuantity(value, quantity, units, 'en')).not.toMatch(/^-0(?![.\d])|NaN|∞|Infinity|e[+-]/);
      }),
    );
  });
});

describe('a reading of the ruler', () => {
  it('is in millimetres, and has its inches beside it where the station speaks in inches', () => {
    expect(formatRuler(139, metric, 'en')).toBe('139\u00a0mm');
    expect(formatRuler(139, customary, 'en')).toBe('139\u00a0mm (5.47\u00a0in)');
    expect(formatRuler(139.5, customary, 'de')).toBe('139,5\u00a0mm (5,49\u00a0in)');
    expect(formatInchesBeside(25.4, customary, 'en')).toBe('1\u00a0in');
    expect(formatInchesBeside(25.4, metric, 'en')).toBeNull();
  });
});

describe('a range', () => {
  it('names the unit once', () => {
    expect(formatRange(makeRange(194, 312, 350), 'minutes', metric, 'en')).toBe('194–350\u00a0min');
    expect(formatRange(makeRange(144, 154, 175), 'temperature', customary, 'en')).toBe('291–347\u00a0°F');
  });

  it('is one figure when both ends show the same', () => {
    expect(formatRange(makeRange(10.4, 10.4, 10.4), 'count', metric, 'en')).toBe('10.4');
    expect(formatRange(makeRange(200.1, 200.2, 200.3), 'temperature', metric, 'en')).toBe('200\u00a0°C');
  });
});

describe('a countdown', () => {
  it.each([
    [766_001, '12:47'],
    [767_000, '12:47'],
    [59_000, '0:59'],
    [60_000, '1:00'],
    [1, '0:01'],
    [0, '0:00'],
    [-0, '0:00'],
    [-999, '0:00'],
    [-1_000, '+0:01'],
    [-41_999, '+0:41'],
    [3_599_000, '59:59'],
    [3_599_001, '1:00:00'],
    [3_909_000, '1:05:09'],
    [-3_909_999, '+1:05:09'],
    [172_800_000, '48:00:00'],
    [Number.NaN, '–'],
    [Number.POSITIVE_INFINITY, '–'],
  ])('of %d ms reads %s', (leftMs, text) => {
    expect(formatCountdown(leftMs)).toBe(text);
  });

  it('never reads 0:00 while anything is left, and is over by whole seconds only', () => {
    holds(
      fc.property(fc.integer({ min: -1e9, max: 1e9 }), (leftMs) => {
        const text = formatCountdown(leftMs);
        expect(text === '0:00').toBe(leftMs <= 0 && leftMs > -1_000);
        expect(text.startsWith('+')).toBe(leftMs <= -1_000);
        expect(text).toMatch(/^\+?(?:\d+:[0-5]\d|[0-5]?\d):[0-5]\d$/);
      }),
    );
  });
});

describe('how long after the beginning', () => {
  it.each([
    [0, '0:00'],
    [119_999, '1:59'],
    [120_000, '2:00'],
    [3_909_000, '1:05:09'],
    [-1, '–'],
    [Number.NaN, '–'],
    [Number.POSITIVE_INFINITY, '–'],
  ])('%d ms is %s', (ms, told) => {
    expect(formatElapsed(ms)).toBe(told);
  });
});
