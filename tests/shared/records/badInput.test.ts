import { describe, expect, it } from 'vitest';
import { type Raw, readForm } from '../../../shared/records/readForm';
import { findShownLimits } from '../../../shared/units/numberField';
import type { UnitSettings } from '../../../shared/units/quantity';
import { allForms, answerAll, customary, lookUp, metric, nowMs, numberFields } from './goodForms';

const bothUnits = [
  ['metric', metric],
  ['customary', customary],
] as const;

const refusalsOf = (form: (typeof numberFields)[number]['form'], raw: unknown, units: UnitSettings) => {
  const read = readForm(form, raw as never, { units, hasAgeLine: true, nowMs, isStation: true });
  return read.ok ? [] : read.error.map(({ path, code }) => `${path} ${code}`);
};

/** What may be typed or pasted into a number field by mistake, and what the field says to it. */
const bad: readonly (readonly [string, Raw, string])[] = [
  ['left empty', '', 'empty'],
  ['blanks', ' \t ', 'empty'],
  ['pasted text', 'about 400 °F, I think', 'notANumber'],
  ['a pasted table', '12\t30\n40', 'notANumber'],
  ['markup', '<img src=x onerror=alert(1)>', 'notANumber'],
  ['1e309', '1e309', 'notFinite'],
  ['Infinity', 'Infinity', 'notFinite'],
  ['−0 with a minus', '−0', 'minusZero'],
  ['-0 with a hyphen', '-0', 'minusZero'],
  ['NaN', 'NaN', 'notANumber'],
  ['hexadecimal', '0x10', 'notANumber'],
  ['thousands', '1,000.5', 'notANumber'],
  ['digits of another script', '٢٠', 'notANumber'],
];

describe('every number field of every form', () => {
  it('is found, the rows of lists among them', () => {
    const paths = numberFields.map(({ where, path }) => `${where}.${path}`);
    expect(paths).toContain('client.targetLevel');
    expect(paths).toContain('hotTools.habits.1.settingC');
    expect(paths).toContain('BOWL_WEIGHED.shades.1.parts');
    expect(paths).toContain('CLOCK_CORRECTED.shiftMs');
    expect(new Set(paths).size).toBe(paths.length);
    expect(paths.length).toBeGreaterThanOrEqual(30);
  });

  it.each(bothUnits)(
    'takes good answers in %s units, so that a refusal is the bad field’s own',
    (_name, units) => {
      for (const [where, form] of allForms) {
        expect(refusalsOf(form, answerAll(form, units), units), where).toEqual([]);
      }
      for (const { where, path, form, fill, field } of numberFields) {
        const typed = String(findShownLimits(field, units).max);
        expect(refusalsOf(form, fill(typed, units), units), `${where}.${path} ${typed}`).toEqual([]);
      }
    },
  );

  it.each(bad)('refuses %s at its own path and no other', (_what, typed, code) => {
    for (const [, units] of bothUnits) {
      for (const { where, path, form, fill } of numberFields) {
        expect(refusalsOf(form, fill(typed, units), units), where).toEqual([`${path} ${code}`]);
      }
    }
  });

  it.each(bothUnits)(
    'takes both of its limits in %s units and refuses the next figure beyond',
    (_name, units) => {
      for (const { where, path, form, fill, field } of numberFields) {
        const { min, max } = findShownLimits(field, units);
        const step = field.step ?? 0.01;
        const below = String(min - Math.max(step, 1));
        const above = String(max + Math.max(step, 1));
        const said = (typed: string) => refusalsOf(form, fill(typed, units), units);
        expect(said(String(min)), `${where}.${path} ${min}`).toEqual([]);
        expect(said(String(max)), `${where}.${path} ${max}`).toEqual([]);
        const code = field.countsBack === true && Number(below) < 0 ? 'inFuture' : 'tooLow';
        expect(said(below), `${where} ${below}`).toEqual([`${path} ${code}`]);
        expect(said(above), `${where} ${above}`).toEqual([`${path} tooHigh`]);
      }
    },
  );

  it('says from where to where, and in which unit', () => {
    const read = readForm(
      numberFields.find(({ path }) => path === 'habits.1.settingC')?.form ?? {},
      { habits: [{}, { settingC: '900' }] },
      { units: customary, hasAgeLine: true, nowMs, isStation: true },
    );
    const refusal = read.ok ? undefined : read.error.find(({ path }) => path === 'habits.1.settingC');
    // ASSUMED limits of the field, 40–250 °C: 104–482 °F by the exact definition of the Fahrenheit scale.
    expect(refusal).toEqual({ path: 'habits.1.settingC', code: 'tooHigh', min: 104, max: 482, unit: '°F' });
  });

  it('takes “don’t know” only where the form says so', () => {
    expect(numberFields.some(({ isUnknownAllowed }) => isUnknownAllowed)).toBe(true);
    for (const { where, path, form, fill, isUnknownAllowed } of numberFields) {
      const said = refusalsOf(form, fill('unknown', metric), metric);
      expect(said, `${where}.${path}`).toEqual(isUnknownAllowed ? [] : [`${path} notANumber`]);
    }
  });

  it('takes no number, list or object in place of a typed text', () => {
    for (const typed of [7, ['7'], [{ value: '7' }]] as readonly Raw[]) {
      for (const { where, path, form, fill } of numberFields) {
        expect(refusalsOf(form, fill(typed, metric), metric), where).toEqual([`${path} empty`]);
      }
    }
  });

  it('keeps the canonical unit, whatever the station speaks', () => {
    for (const { where, path, form, fill, field } of numberFields) {
      const { min, unit } = findShownLimits(field, customary);
      const context = { units: customary, hasAgeLine: true, nowMs, isStation: true };
      const read = readForm(form, fill(String(min), customary), context);
      const kept = read.ok ? (lookUp(read.value, path) as number) : Number.NaN;
      // Exact definitions: 1 in = 2.54 cm, 1 oz = 28.349523125 g, °C = (°F − 32) ÷ 1.8.
      const factor = unit === 'in' ? 2.54 : unit === 'oz' ? 28.349523125 : 1;
      const expected = unit === '°F' ? (min - 32) / 1.8 : min * factor;
      expect(kept, `${where}.${path} ${min} ${unit}`).toBeCloseTo(expected, 9);
      expect(kept).toBeGreaterThanOrEqual(field.min);
    }
  });
});
