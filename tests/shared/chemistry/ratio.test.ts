import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { PeroxidePercent } from '../../../shared/chemistry/peroxide';
import { computeBowlPercent, splitByParts } from '../../../shared/chemistry/ratio';
import { brand } from '../../../shared/units/brand';
import { holds, numberBetween } from '../seeded';

const percent = (value: number) => brand<PeroxidePercent>(value);
const toMg = (grams: number) => Math.round(grams * 1000);
const sumMg = (grams: readonly number[]) => grams.reduce((sum, amount) => sum + toMg(amount), 0);

describe('the strength in the bowl', () => {
  it('is weaker than the bottle and rises with the developer’s share', () => {
    holds(
      fc.property(
        numberBetween(0.5, 12),
        numberBetween(0.01, 20),
        numberBetween(0.01, 20),
        (bottle, r, more) => {
          const [thick, thin] = [
            computeBowlPercent(percent(bottle), r),
            computeBowlPercent(percent(bottle), r + more),
          ];
          if (!thick.ok || !thin.ok) throw new Error('a mix was refused');
          expect(thick.value).toBeLessThan(bottle);
          expect(thin.value).toBeGreaterThan(thick.value);
          expect(thin.value).toBeLessThan(bottle);
        },
      ),
    );
  });

  it('is none for a bottle of none', () => {
    expect(computeBowlPercent(percent(0), 2)).toEqual({ ok: true, value: 0 });
  });

  it('is refused for a ratio that cannot be weighed', () => {
    expect(computeBowlPercent(percent(12), 0)).toEqual({ ok: false, error: 'notPositive' });
    expect(computeBowlPercent(percent(12), -1)).toEqual({ ok: false, error: 'notPositive' });
    expect(computeBowlPercent(percent(-3), 1)).toEqual({ ok: false, error: 'notPositive' });
    expect(computeBowlPercent(percent(12), 1 / 0)).toEqual({ ok: false, error: 'notFinite' });
    expect(computeBowlPercent(percent(Number.NaN), 1)).toEqual({ ok: false, error: 'notFinite' });
  });
});

describe('the grams of each part', () => {
  it('are whole steps of the scale, largest loss first, and tell what is left over', () => {
    expect(splitByParts(100, [1, 1, 1], 1)).toEqual({
      ok: true,
      value: { amountsG: [34, 33, 33], remainderG: 0 },
    });
    expect(splitByParts(100, [2, 1, 4.5], 0.1)).toEqual({
      ok: true,
      value: { amountsG: [26.7, 13.3, 60], remainderG: 0 },
    });
    expect(splitByParts(100.7, [1, 1], 0.5)).toEqual({
      ok: true,
      value: { amountsG: [50.5, 50], remainderG: 0.2 },
    });
  });

  it.each([
    [100, [], 1, 'noParts'],
    [100, new Array(13).fill(1), 1, 'tooManyParts'],
    [100, [0, 1], 1, 'notPositive'],
    [100, [1, -1], 1, 'notPositive'],
    [0, [1, 1], 1, 'notPositive'],
    [-5, [1, 1], 1, 'notPositive'],
    [100, [1, 1], 0, 'notPositive'],
    [Number.NaN, [1, 1], 1, 'notFinite'],
    [100, [1, Number.POSITIVE_INFINITY], 1, 'notFinite'],
    [100, [1, 1], Number.NaN, 'notFinite'],
    [1000.1, [1, 1], 0.1, 'tooMuch'],
    [100, [1, 1], 0.0001, 'stepTooFine'],
    [10, [1, 9.1], 1, 'stepTooCoarse'],
    [1, [1, 1], 2, 'stepTooCoarse'],
  ] as const)('of %d g in %j by %d g are refused: %s', (totalG, parts, stepG, error) => {
    expect(splitByParts(totalG, parts, stepG)).toEqual({ ok: false, error });
  });

  it('are given right up to each limit', () => {
    expect(splitByParts(1000, [1, 1], 1).ok).toBe(true);
    expect(splitByParts(100, new Array(12).fill(1), 0.1).ok).toBe(true);
    expect(splitByParts(10, [1, 9], 1)).toEqual({ ok: true, value: { amountsG: [1, 9], remainderG: 0 } });
    expect(splitByParts(0.3, [1, 1, 1], 0.1)).toEqual({
      ok: true,
      value: { amountsG: [0.1, 0.1, 0.1], remainderG: 0 },
    });
  });

  it('give the step that is left to the earlier of two that lost the same', () => {
    expect(splitByParts(215, [12.25, 0.25, 8.75], 1)).toMatchObject({ value: { amountsG: [124, 3, 88] } });
  });

  it('make the total exactly, each within a step of its share and none of them nothing', () => {
    const parts = fc.array(numberBetween(0.25, 20), { minLength: 1, maxLength: 12 });
    const step = fc.constantFrom(0.01, 0.1, 0.5, 1, 2);
    let split = 0;
    holds(
      fc.property(numberBetween(1, 1000), parts, step, (totalG, shares, stepG) => {
        const result = splitByParts(totalG, shares, stepG);
        if (!result.ok) {
          expect(result.error).toBe('stepTooCoarse');
          return;
        }
        split += 1;
        const { amountsG, remainderG } = result.value;
        expect(sumMg(amountsG) + toMg(remainderG)).toBe(toMg(totalG));
        expect(remainderG).toBeGreaterThanOrEqual(0);
        expect(toMg(remainderG)).toBeLessThan(toMg(stepG));
        const whole = shares.reduce((sum, share) => sum + share, 0);
        amountsG.forEach((amountG, index) => {
          expect(toMg(amountG) % toMg(stepG)).toBe(0);
          expect(amountG).toBeGreaterThan(0);
          const exactG = ((totalG - remainderG) * (shares[index] ?? 0)) / whole;
          expect(Math.abs(amountG - exactG)).toBeLessThanOrEqual(stepG + 0.002);
        });
      }),
    );
    expect(split).toBeGreaterThan(100);
  });
});
