import { describe, it } from 'vitest';
import {
  computeAgeWeeks,
  growthMeasured,
  toCmAMonth,
  toCmAWeek,
  usualGrowth,
} from '../../shared/heat/growth';
import { brand } from '../../shared/units/brand';
import type { Centimetre } from '../../shared/units/length';
import { checkFigure } from './check';

const source =
  'published: Loussouarn, El Rawadi, Genain, Int. J. Dermatol. 44(Suppl 1):6–9, 2005, Table 1; months of 30.4375 d';
const weeksAMonth = 30.4375 / 7;

describe('hair growth', () => {
  it.each([
    [280, 0.852],
    [367, 1.117],
    [411, 1.251],
  ])('of %d µm a day is %d cm a month', (um, expected) => {
    checkFigure({
      input: `${um} µm/day, cm a month`,
      got: toCmAMonth(um),
      expected,
      tolerance: 0.001,
      source,
    });
    const fromWeeks = toCmAWeek(um) * weeksAMonth;
    checkFigure({ input: `${um} µm/day by the week`, got: fromWeeks, expected, tolerance: 0.001, source });
  });

  it('was measured in three populations, and the middle one stands with its deviation', () => {
    const printed = [
      [280, 50],
      [367, 56],
      [411, 53],
    ] as const;
    for (const [index, [mean, sd]] of printed.entries()) {
      const got = growthMeasured[index];
      checkFigure({ input: 'mean', got: got?.meanUm ?? Number.NaN, expected: mean, tolerance: 0, source });
      checkFigure({ input: 'deviation', got: got?.sdUm ?? Number.NaN, expected: sd, tolerance: 0, source });
    }
    const perDay = (cmAWeek: number) => (cmAWeek * 10_000) / 7;
    const ends = [
      [perDay(usualGrowth.low), 311],
      [perDay(usualGrowth.typical), 367],
      [perDay(usualGrowth.high), 423],
    ] as const;
    for (const [got, expected] of ends) {
      checkFigure({ input: 'usual growth, µm/day', got, expected, tolerance: 1e-9, source });
    }
  });

  it('lies within what is known of the world', () => {
    const world = 'published: Practical Modern Hair Science, 2012, ch. 6 p. 197: 0.8–1.3 cm a month';
    for (const { meanUm } of growthMeasured) {
      const got = toCmAMonth(meanUm);
      checkFigure({ input: `${meanUm} µm/day`, got, expected: 1.05, tolerance: 0.25, source: world });
    }
  });

  it('makes hair at 15 cm 13.4 months old, 11.65 to 15.85 within a deviation', () => {
    const { low, typical, high } = computeAgeWeeks(brand<Centimetre>(15), usualGrowth);
    const months = [
      [low, 11.65],
      [typical, 13.4],
      [high, 15.85],
    ] as const;
    for (const [weeks, expected] of months) {
      checkFigure({ input: '15 cm, months', got: weeks / weeksAMonth, expected, tolerance: 0.05, source });
    }
  });
});
