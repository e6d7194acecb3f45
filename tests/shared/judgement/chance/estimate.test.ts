import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Covariates, covariateNames } from '../../../../shared/judgement/chance/covariates';
import {
  ASSUMED_CHANCE_HIGH,
  ASSUMED_CHANCE_RAISED,
  ASSUMED_CHANCE_SDS,
  estimateChance,
  nameChance,
  toVector,
} from '../../../../shared/judgement/chance/estimate';
import { priorCoefficients, priorMeans, priorSds } from '../../../../shared/judgement/chance/prior';

const make = (of: (index: number) => { value: number; spread: number }): Covariates =>
  Object.fromEntries(covariateNames.map((name, index) => [name, of(index)])) as Covariates;
const nothing = make(() => ({ value: 0, spread: 0 }));
const worst = make(() => ({ value: 1, spread: 0.25 }));
const logistic = (logOdds: number) => 1 / (1 + Math.exp(-logOdds));

const share = fc.double({ min: 0, max: 1, noNaN: true });
/** Enough to be told from rounding. */
const more = fc.double({ min: 0.01, max: 1, noNaN: true });
const anyHair = fc
  .array(fc.record({ value: share, spread: share }), { minLength: 13, maxLength: 13 })
  .map((all) => make((index) => all[index] ?? { value: 0, spread: 0 }));

describe('the chance that strands like this break', () => {
  it('is that of the base where nothing speaks against the hair (ASSUMED), with its spread as band', () => {
    const { chance, low, high, word, reasons } = estimateChance(nothing, priorCoefficients);
    expect(chance).toBeCloseTo(logistic(-3.2), 12);
    expect(low).toBeCloseTo(logistic(-3.2 - ASSUMED_CHANCE_SDS * 0.5), 12);
    expect(high).toBeCloseTo(logistic(-3.2 + ASSUMED_CHANCE_SDS * 0.5), 12);
    expect([word, reasons]).toEqual(['low', []]);
  });

  it('adds log-odds, and spreads of coefficients and of what is not known, by hand', () => {
    const hair = { ...nothing, ironedWet: { value: 0.5, spread: 0.2 }, porous: { value: 1, spread: 0 } };
    const logOdds = -3.2 + 0.9 * 0.5 + 0.5;
    const sd = Math.sqrt(0.5 ** 2 + (0.5 * 0.4) ** 2 + 0.3 ** 2 + (0.9 * 0.2) ** 2);
    const found = estimateChance(hair, priorCoefficients);
    expect(found.chance).toBeCloseTo(logistic(logOdds), 12);
    expect(found.low).toBeCloseTo(logistic(logOdds - ASSUMED_CHANCE_SDS * sd), 12);
    expect(found.high).toBeCloseTo(logistic(logOdds + ASSUMED_CHANCE_SDS * sd), 12);
    expect(found.reasons).toEqual([
      { name: 'porous', logOdds: 0.5 },
      { name: 'ironedWet', logOdds: 0.45 },
    ]);
  });

  it.each(covariateNames)('rises when %s gets worse, whatever the rest is', (name) =>
    fc.assert(
      fc.property(anyHair, fc.double({ min: 0, max: 0.9, noNaN: true }), more, (hair, value, by) => {
        const at = (each: number) =>
          estimateChance({ ...hair, [name]: { value: each, spread: 0 } }, priorCoefficients);
        expect(at(Math.min(1, value + by)).chance).toBeGreaterThan(at(value).chance);
      }),
      { seed: 20261125 },
    ),
  );

  it('lies strictly between none and certain, inside its band, also with absurd coefficients', () => {
    const absurd = (size: number) => ({
      means: priorMeans.map(() => size),
      covariance: priorSds.map(() => priorSds.map(() => Math.abs(size))),
    });
    for (const hair of [nothing, worst]) {
      for (const coefficients of [priorCoefficients, absurd(1e6), absurd(-1e6)]) {
        const { chance, low, high } = estimateChance(hair, coefficients);
        expect([chance, low, high].every(Number.isFinite)).toBe(true);
        expect(low).toBeGreaterThan(0);
        expect(high).toBeLessThan(1);
        expect(chance).toBeGreaterThanOrEqual(low);
        expect(chance).toBeLessThanOrEqual(high);
      }
    }
  });

  it('takes a posterior: coefficients that move together narrow or widen its band', () => {
    const hair = { ...nothing, porous: { value: 1, spread: 0 } };
    const porous = covariateNames.indexOf('porous') + 1;
    const withTie = (tie: number) => ({
      ...priorCoefficients,
      covariance: priorCoefficients.covariance.map((row, at) =>
        row.map((each, column) =>
          (at === 0 && column === porous) || (at === porous && column === 0) ? tie : each,
        ),
      ),
    });
    const width = (tie: number) => {
      const { low, high } = estimateChance(hair, withTie(tie));
      return high - low;
    };
    expect(width(-0.1)).toBeLessThan(width(0));
    expect(width(0.1)).toBeGreaterThan(width(0));
  });

  it('names the three that weigh most, heaviest first, with their sign', () => {
    const helpful = { ...priorCoefficients, means: priorMeans.map((mean, at) => (at === 13 ? -5 : mean)) };
    const { reasons } = estimateChance(worst, helpful);
    expect(reasons).toEqual([
      { name: 'strangeColour', logOdds: -5 },
      { name: 'bleaches', logOdds: 1.4 },
      { name: 'slowStretch', logOdds: 1.3 },
    ]);
  });

  it('is called raised and high from its thresholds on (ASSUMED)', () => {
    expect(nameChance(ASSUMED_CHANCE_RAISED - 1e-9)).toBe('low');
    expect(nameChance(ASSUMED_CHANCE_RAISED)).toBe('raised');
    expect(nameChance(ASSUMED_CHANCE_HIGH - 1e-9)).toBe('raised');
    expect(nameChance(ASSUMED_CHANCE_HIGH)).toBe('high');
  });
});

describe('the vectors', () => {
  it('have the base first and one place for each name', () => {
    expect(priorMeans).toHaveLength(covariateNames.length + 1);
    expect(priorSds).toHaveLength(covariateNames.length + 1);
    expect(toVector(worst)).toEqual(priorMeans.map(() => 1));
    expect(toVector(nothing)).toEqual(priorMeans.map((_, index) => (index === 0 ? 1 : 0)));
  });

  it('of the prior make breaking likelier for everything that harms, and none is certain', () => {
    expect(priorMeans.slice(1).every((mean) => mean > 0)).toBe(true);
    expect(priorSds.every((sd) => sd > 0)).toBe(true);
  });
});
