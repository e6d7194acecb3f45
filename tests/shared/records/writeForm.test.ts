import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readForm } from '../../../shared/records/readForm';
import { writeForm } from '../../../shared/records/writeForm';
import { findShownLimits } from '../../../shared/units/numberField';
import { holds } from '../seeded';
import { allForms, answerAll, customary, lookUp, metric, nowMs, numberFields } from './goodForms';

const context = { hasAgeLine: true, nowMs, isStation: true };

describe('stored answers written back into their fields', () => {
  it.each([
    ['metric', metric],
    ['customary', customary],
  ])('read the same again, for every form, in %s units', (_name, units) => {
    for (const [where, form] of allForms) {
      const first = readForm(form, answerAll(form, units), { ...context, units });
      if (!first.ok) throw new Error(where);
      const again = readForm(form, writeForm(form, first.value, units), { ...context, units });
      expect(again.ok && Object.keys(again.value), where).toEqual(Object.keys(first.value));
    }
  });

  it('show the figure that was typed, and keep it to a millionth, in any field', () =>
    holds(
      fc.property(
        fc.constantFrom(...numberFields),
        fc.constantFrom(metric, customary),
        fc.double({ min: 0, max: 1, noNaN: true }),
        ({ form, path, field, fill }, units, share) => {
          const { min, max } = findShownLimits(field, units);
          const finest = field.step ?? 0.01;
          const typed = String(
            Number((Math.round((min + share * (max - min)) / finest) * finest).toFixed(2)),
          );
          const first = readForm(form, fill(typed, units), { ...context, units });
          fc.pre(first.ok);
          if (!first.ok) return;
          const written = writeForm(form, first.value, units);
          expect(Number(lookUp(written, path))).toBe(Number(typed));
          const again = readForm(form, written, { ...context, units });
          const value = again.ok ? lookUp(again.value, path) : undefined;
          expect(value).toBeCloseTo(lookUp(first.value, path) as number, 6);
        },
      ),
      1000,
    ));

  it('are still accepted at their very limits when the station changes its units meanwhile', () => {
    const refused: string[] = [];
    for (const [from, to] of [
      [metric, customary],
      [customary, metric],
    ] as const) {
      for (const { where, form, path, field, fill } of numberFields) {
        for (const limit of Object.values(findShownLimits(field, from)).slice(0, 2)) {
          const first = readForm(form, fill(String(limit), from), { ...context, units: from });
          if (!first.ok) throw new Error(`${where}.${path} ${limit}`);
          const again = readForm(form, writeForm(form, first.value, to), { ...context, units: to });
          if (!again.ok) refused.push(`${where}.${path} ${limit} ${JSON.stringify(again.error)}`);
        }
      }
    }
    expect(refused).toEqual([]);
  });

  it('leave out what was not answered and keep “don’t know”', () => {
    const tools = allForms.find(([name]) => name === 'hotTools')?.[1] ?? {};
    const written = writeForm(
      tools,
      { bleaches: 'unknown', habits: [{ settingC: (400 - 32) / 1.8 }] },
      customary,
    );
    expect(written).toMatchObject({ bleaches: 'unknown', habits: [{ settingC: '400' }] });
    expect(written.smoke).toBeUndefined();
  });
});
