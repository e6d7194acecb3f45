import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  findShownLimits,
  type NumberField,
  type NumberRefusal,
  readNumber,
  writeNumber,
} from '../../../shared/units/numberField';
import { findShownUnit, type Quantity, type UnitSettings } from '../../../shared/units/quantity';
import { holds, numberBetween } from '../seeded';

const metric: UnitSettings = { temperature: 'C', mass: 'g', length: 'cm' };
const customary: UnitSettings = { temperature: 'F', mass: 'oz', length: 'in' };
const percent: NumberField = { quantity: 'percent', min: 0, max: 100 };
const setting: NumberField = { quantity: 'temperature', min: 40, max: 250 };
const level: NumberField = { quantity: 'level', min: 1, max: 10, step: 0.5 };
const awkward: NumberField = { quantity: 'mass', min: 2.03, max: 299.97 };
const plate: NumberField = { quantity: 'length', min: 0.5, max: 10 };
const hairs: NumberField = { quantity: 'count', min: 20, max: 50, step: 1 };
const belowZero: NumberField = { quantity: 'temperature', min: -20, max: 40 };

const anyField = fc.constantFrom(percent, setting, level, awkward, plate, hairs, belowZero);
const anyQuantity = fc.constantFrom<Quantity[]>('temperature', 'mass', 'length', 'percent', 'count');
const anyUnits = fc.constantFrom(metric, customary);

const read = (text: string, field = percent, units = metric) => {
  const result = readNumber(text, field, units);
  return result.ok ? result.value : result.error.code;
};

describe('a typed text', () => {
  it.each([
    ['12', 12],
    ['12.5', 12.5],
    ['12,5', 12.5],
    [' 12\u00a0', 12],
    ['.5', 0.5],
    ['5.', 5],
    ['007', 7],
    ['0', 0],
    ['0.0', 0],
    ['100', 100],
  ])('"%s" is read as %d', (text, value) => expect(read(text)).toBe(value));

  it.each<[string, NumberRefusal['code']]>([
    ['', 'empty'],
    [' \t\n', 'empty'],
    ['-0', 'minusZero'],
    ['−0', 'minusZero'],
    ['-0,00', 'minusZero'],
    ['NaN', 'notANumber'],
    ['Infinity', 'notFinite'],
    ['-infinity', 'notFinite'],
    ['∞', 'notFinite'],
    ['1e309', 'notFinite'],
    ['-1e309', 'notFinite'],
    ['1e3', 'notANumber'],
    ['1e1', 'notANumber'],
    ['12 34', 'notANumber'],
    ['12,3,4', 'notANumber'],
    ['1.234,5', 'notANumber'],
    ['+5', 'notANumber'],
    ['--5', 'notANumber'],
    ['5-', 'notANumber'],
    ['.', 'notANumber'],
    ['-', 'notANumber'],
    ['0x10', 'notANumber'],
    ['１２', 'notANumber'],
    ['١٢', 'notANumber'],
    ['½', 'notANumber'],
    ['12 %', 'notANumber'],
    ['about thirty minutes, twice a week', 'notANumber'],
    ['-1', 'tooLow'],
    ['−0.1', 'tooLow'],
    ['100.1', 'tooHigh'],
  ])('"%s" is refused: %s', (text, code) => expect(read(text)).toBe(code));

  it('is read in the station’s unit and kept in the canonical one', () => {
    expect(read('212', setting, customary)).toBe(100);
    expect(read('482', setting, customary)).toBe(250);
    expect(read('483', setting, customary)).toBe('tooHigh');
    expect(read('104', setting, customary)).toBe(40);
    expect(read('103', setting, customary)).toBe('tooLow');
    expect(read('1', plate, customary)).toBe(2.54);
    expect(read('1', { ...awkward }, customary)).toBe(28.349523125);
    expect(read('-4', belowZero, customary)).toBe(-20);
  });

  it('keeps to the step of its field', () => {
    expect(read('7.5', level)).toBe(7.5);
    expect(read('7,5', level)).toBe(7.5);
    expect(read('7.4', level)).toBe('notOnStep');
    expect(read('7.50001', level)).toBe('notOnStep');
    expect(read('30', hairs)).toBe(30);
    expect(read('30.5', hairs)).toBe('notOnStep');
    expect(read('0.3', { quantity: 'mass', min: 0, max: 1, step: 0.1 })).toBe(0.3);
  });

  it('is judged at once, however long it is', () => {
    const nines = '9'.repeat(10_000);
    const long = [nines, '1,'.repeat(5_000), `${' '.repeat(9_999)}x`, '-'.repeat(10_000), '1e'.repeat(5_000)];
    const began = performance.now();
    const codes = long.map((text) => read(text));
    expect(codes).toEqual(['notFinite', 'notANumber', 'notANumber', 'notANumber', 'notANumber']);
    expect(performance.now() - began).toBeLessThan(1_000);
  });
});

describe('the limits that are shown', () => {
  it('are rounded inward in the station’s unit', () => {
    expect(findShownLimits(setting, customary)).toEqual({ min: 104, max: 482, unit: '°F' });
    expect(findShownLimits(awkward, metric)).toEqual({ min: 2.1, max: 299.9, unit: 'g' });
    expect(findShownLimits(plate, customary)).toEqual({ min: 0.2, max: 3.93, unit: 'in' });
    expect(findShownLimits(level, metric)).toEqual({ min: 1, max: 10, unit: '' });
  });

  it('come with every refusal and are themselves accepted', () => {
    holds(
      fc.property(
        anyQuantity,
        anyUnits,
        numberBetween(0, 300),
        numberBetween(10, 300),
        (quantity, units, min, width) => {
          const field: NumberField = { quantity, min, max: min + width };
          const refused = readNumber('', field, units);
          if (refused.ok) throw new Error('an empty field was accepted');
          const { digits } = findShownUnit(field.quantity, units);
          for (const limit of [refused.error.min, refused.error.max]) {
            expect(
              readNumber(limit.toFixed(digits), field, units).ok,
              `${limit} of ${JSON.stringify(field)}`,
            ).toBe(true);
          }
        },
      ),
    );
  });
});

describe('any text at all', () => {
  const typing = fc.string({ unit: fc.constantFrom(...'0123456789.,-−+eE ٣３∞NaInfty%°\u00a0\n') });
  const usual = fc.integer({ min: -300, max: 3_200 }).map((tenths) => (tenths / 10).toFixed(1));
  const anyText = fc.oneof(
    { weight: 5, arbitrary: usual },
    fc.string(),
    fc.string({ unit: 'binary' }),
    typing,
    fc.double().map(String),
  );

  it('is accepted inside the range or refused with a reason, and never throws', () => {
    let accepted = 0;
    holds(
      fc.property(anyText, anyField, anyUnits, (text, field, units) => {
        const result = readNumber(text, field, units);
        if (!result.ok) {
          expect(result.error.min).toBeLessThanOrEqual(result.error.max);
          return;
        }
        accepted += 1;
        expect(result.value).toBeGreaterThanOrEqual(field.min);
        expect(result.value).toBeLessThanOrEqual(field.max);
        expect(Object.is(result.value, -0)).toBe(false);
      }),
      3_000,
    );
    expect(accepted).toBeGreaterThan(200);
  });
});

describe('a kept value', () => {
  it('is written so that reading it gives the same value to within one shown digit', () => {
    holds(
      fc.property(anyField, anyUnits, numberBetween(0, 1), (field, units, share) => {
        const { digits, toShown } = findShownUnit(field.quantity, units);
        const limits = findShownLimits(field, units);
        const typed = limits.min + share * (limits.max - limits.min);
        const onStep = field.step ? Math.round(typed / field.step) * field.step : typed;
        const first = readNumber(onStep.toFixed(6), field, units);
        if (!first.ok) throw new Error(`${onStep} was refused: ${first.error.code}`);
        const written = writeNumber(first.value, field, units);
        const second = readNumber(written, field, units);
        if (!second.ok) throw new Error(`"${written}" was refused: ${second.error.code}`);
        const moved = Math.abs(toShown(second.value) - toShown(first.value));
        expect(moved).toBeLessThanOrEqual(10 ** -digits + 1e-9);
        expect(writeNumber(second.value, field, units)).toBe(written);
      }),
      2_000,
    );
  });

  it('next to a limit is written inside it, so that it can be confirmed as it stands', () => {
    expect(writeNumber(299.96, awkward, metric)).toBe('299.9');
    expect(writeNumber(2.03, awkward, metric)).toBe('2.1');
    expect(writeNumber(250, setting, customary)).toBe('482');
  });

  it('leaves the field empty when it is no number', () => {
    expect(writeNumber(Number.NaN, percent, metric)).toBe('');
    expect(writeNumber(Number.POSITIVE_INFINITY, percent, metric)).toBe('');
  });
});
