import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { computeBoilingPoint } from '../../shared/heat/boilingPoint';
import { boilOff } from '../../shared/heat/press/boilOff';
import {
  ASSUMED_CONDUCTIVITY,
  ASSUMED_CONTACT,
  ASSUMED_REGAIN,
  FIBRE_HEAT,
  FIBRE_PER_M3,
  LATENT_HEAT,
  WATER_HEAT,
} from '../../shared/heat/press/bundle';
import {
  ASSUMED_MOST_PRESSES,
  ASSUMED_ON_PLACE_S,
  ASSUMED_SECTIONS_MM,
} from '../../shared/heat/press/choices';
import {
  ASSUMED_BETWEEN_PRESSES_S,
  type Fineness,
  findPressTime,
  type Press,
  type PressMoment,
  pressHair,
} from '../../shared/heat/press/press';
import { brand } from '../../shared/units/brand';
import type { Celsius } from '../../shared/units/temperature';
import { checkFigure } from './check';
import { findFactor, findRoot, solveSlab } from './slabSeries';

const celsius = (value: number) => brand<Celsius>(value);
const textbook = 'published: heat-transfer textbooks, one-term table of the plane wall, Bi 1';
const series = 'published: Carslaw & Jaeger 1959, § 3.11';

/** Bi 1 by its thickness; dry. */
const halfM = ASSUMED_CONDUCTIVITY / ASSUMED_CONTACT;
const diffusivity = ASSUMED_CONDUCTIVITY / (FIBRE_PER_M3 * FIBRE_HEAT);
const secondsAt = (fo: number): number => (fo * halfM * halfM) / diffusivity;
const pressDry = (fo: number, fineness: Fineness) =>
  pressHair(
    {
      thicknessMm: halfM * 2000,
      plateC: celsius(1),
      startC: celsius(0),
      boilingC: celsius(100),
      regain: 0,
      contactS: secondsAt(fo),
    },
    fineness,
  ).at(-1) as { coreC: number; surfaceC: number };

const wet: Press = {
  thicknessMm: 3,
  plateC: celsius(200),
  startC: celsius(25),
  boilingC: computeBoilingPoint(0),
  regain: 0.3,
  contactS: 8,
};

describe('a dry section between two plates', () => {
  it('has the first root and factor of the table', () => {
    const root = findRoot(0, 1);
    checkFigure({ input: 'ζ₁ at Bi 1', got: root, expected: 0.8603, tolerance: 5e-5, source: textbook });
    checkFigure({
      input: 'C₁ at Bi 1',
      got: findFactor(root),
      expected: 1.1191,
      tolerance: 5e-5,
      source: textbook,
    });
  });

  it.each([0.5, 1, 2])('has the core of the one-term table at Fo %d', (fo) => {
    checkFigure({
      input: `core, share of the way, Fo ${fo}`,
      got: 1 - pressDry(fo, { cells: 80, steps: 1600 }).coreC,
      expected: 1.1191 * Math.exp(-(0.8603 ** 2) * fo),
      tolerance: 5e-4,
      source: textbook,
    });
  });

  it.each([
    [0.05, 0],
    [0.05, 1],
    [0.4, 0],
    [0.4, 1],
    [1.5, 0],
    [1.5, 1],
  ])('follows the exact series at Fo %d, place %d', (fo, place) => {
    const got = pressDry(fo, { cells: 160, steps: 3200 });
    checkFigure({
      input: `Fo ${fo}, ${place === 0 ? 'core' : 'surface'}`,
      got: 1 - (place === 0 ? got.coreC : got.surfaceC),
      expected: solveSlab(place, 1, fo),
      tolerance: 1e-4,
      source: series,
    });
  });

  it('comes four times as near with cells and steps of half the size', () => {
    const miss = (cells: number): number => {
      const got = pressDry(0.5, { cells, steps: cells * 4 });
      return Math.max(
        Math.abs(1 - got.coreC - solveSlab(0, 1, 0.5)),
        Math.abs(1 - got.surfaceC - solveSlab(1, 1, 0.5)),
      );
    };
    const misses = [8, 16, 32, 64].map(miss);
    for (const [at, coarse] of misses.slice(0, -1).entries()) {
      const order = Math.log2(coarse / (misses[at + 1] as number));
      expect(order, `misses ${misses.join(', ')}`).toBeGreaterThan(1.8);
      expect(order, `misses ${misses.join(', ')}`).toBeLessThan(2.2);
    }
  });
});

describe('water in the section', () => {
  it('takes 0.87 kJ for a gram of dry hair with 0.3 g of water from 25 to dry at 100 °C', () => {
    const dryHeat = FIBRE_HEAT / 1000;
    const full = { hereC: 25, water: 0.3 / 1000 };
    const takes = (joules: number) =>
      boilOff({ ...full, hereC: 25 + joules / (dryHeat + full.water * WATER_HEAT) }, 100, dryHeat);
    const needed = (dryHeat + full.water * WATER_HEAT) * 75 + full.water * LATENT_HEAT;
    checkFigure({
      input: '1 g dry hair, 30 % regain, 25 °C to dry at 100 °C, kJ',
      got: needed / 1000,
      expected: 0.87,
      tolerance: 0.01,
      source: 'textbook figures of EVIDENCE § 11: 1.36 and 4.18 J/(g·K) from memory, 2256.6 kJ/kg',
    });
    expect(takes(needed - 1).water).toBeGreaterThan(0);
    expect(takes(needed + 1)).toEqual({ hereC: expect.closeTo(100 + 1 / dryHeat, 6), water: 0 });
  });

  it('makes and loses no heat, whatever is pressed', () => {
    fc.assert(
      fc.property(
        fc.record({
          thicknessMm: fc.double({ min: 0.2, max: 10, noNaN: true }),
          plateC: fc.double({ min: 60, max: 235, noNaN: true }),
          regain: fc.double({ min: 0, max: 0.8, noNaN: true }),
          contactS: fc.double({ min: 0.1, max: 30, noNaN: true }),
          presses: fc.integer({ min: 1, max: ASSUMED_MOST_PRESSES }),
        }),
        ({ thicknessMm, plateC, regain, contactS, presses }) => {
          const press = { ...wet, thicknessMm, plateC: celsius(plateC), regain, contactS, presses };
          const last = pressHair(press).at(-1);
          const boiled = FIBRE_PER_M3 * regain * (1 - (last?.waterLeft ?? 0));
          // What went in is at least what boiling alone took, and at most what everything at the plate's heat would hold.
          const half = thicknessMm / 2000;
          const least = regain === 0 ? 0 : boiled * (LATENT_HEAT + WATER_HEAT * (press.boilingC - 25)) * half;
          const most =
            half * (FIBRE_PER_M3 * (FIBRE_HEAT + regain * WATER_HEAT) * (plateC - 25) + boiled * LATENT_HEAT);
          expect(last?.heatJ).toBeGreaterThanOrEqual(least - 1e-6);
          expect(last?.heatJ).toBeLessThanOrEqual(most * (1 + 1e-9));
        },
      ),
      { seed: 20261127, numRuns: 60 },
    );
  });

  it('has taken, once all of it is dry and as hot as the plate, just what the balance says', () => {
    const press = { ...wet, thicknessMm: 0.5, contactS: 60 };
    const last = pressHair(press, { cells: 24, steps: 4800 }).at(-1);
    const half = 0.25 / 1000;
    const dry = FIBRE_PER_M3 * FIBRE_HEAT * (200 - 25);
    const water = FIBRE_PER_M3 * 0.3 * (WATER_HEAT * (press.boilingC - 25) + LATENT_HEAT);
    expect(last?.waterLeft).toBe(0);
    expect((last?.heatJ ?? 0) / ((dry + water) * half)).toBeCloseTo(1, 6);
  });
});

describe('a section that is pressed again', () => {
  const again: Press = { ...wet, thicknessMm: 1, contactS: 2, presses: 3 };
  const isBetween = ({ atS }: PressMoment): boolean =>
    atS % (2 + ASSUMED_BETWEEN_PRESSES_S) > 2 + 1e-9 && atS < findPressTime(again) - 1e-9;

  it('is nowhere hotter than the plate at 200 °C, however thin it is, at the coarsest steps that are drawn', () => {
    for (const thicknessMm of ASSUMED_SECTIONS_MM) {
      for (const regain of Object.values(ASSUMED_REGAIN)) {
        const moments = pressHair({ ...wet, thicknessMm, regain, presses: ASSUMED_MOST_PRESSES });
        const hottest = Math.max(...moments.flatMap(({ surfaceC, coreC }) => [surfaceC, coreC]));
        expect(hottest, `${thicknessMm} mm, regain ${regain}`).toBeLessThanOrEqual(200 + 1e-9);
        expect(hottest).toBeGreaterThan(140);
      }
    }
  });

  it('takes three presses and the two pauses between them', () => {
    expect(findPressTime(again)).toBe(3 * 2 + 2 * ASSUMED_BETWEEN_PRESSES_S);
    expect(pressHair(again).at(-1)?.atS).toBeCloseTo(findPressTime(again), 9);
  });

  it('goes as a single press does until the first is over', () => {
    const fineness = { cells: 48, steps: 1200 };
    const alone = pressHair({ ...again, presses: 1 }, { cells: 48, steps: 200 });
    const first = pressHair(again, fineness).slice(0, alone.length);
    for (const [at, { coreC, surfaceC }] of alone.entries()) {
      expect(first[at]?.coreC).toBeCloseTo(coreC, 9);
      expect(first[at]?.surfaceC).toBeCloseTo(surfaceC, 9);
    }
  });

  it('takes no heat in while the plates are off, and comes to one temperature', () => {
    const moments = pressHair({ ...again, regain: 0, thicknessMm: 0.2 }, { cells: 12, steps: 4800 });
    const paused = moments.filter(isBetween);
    expect(new Set(paused.map(({ heatJ }) => heatJ)).size).toBe(2);
    const end = paused.filter(({ atS }) => atS < 5).at(-1);
    // All that went in is in the fibres: half a section of 0.2 mm.
    const expected = 25 + (end?.heatJ ?? 0) / (FIBRE_PER_M3 * FIBRE_HEAT * 0.1e-3);
    expect(end?.coreC).toBeCloseTo(expected, 6);
    expect(end?.surfaceC).toBeCloseTo(expected, 6);
  });

  it('lets the outside cool in between and get hotter with each press', () => {
    const moments = pressHair({ ...again, regain: ASSUMED_REGAIN.dry });
    const endOf = (press: number) =>
      moments.filter(({ atS }) => atS <= press * 5 - ASSUMED_BETWEEN_PRESSES_S + 1e-9).at(-1);
    const coolest = Math.min(...moments.filter(isBetween).map(({ surfaceC }) => surfaceC));
    expect(coolest).toBeLessThan(endOf(1)?.surfaceC ?? 0);
    expect(endOf(2)?.surfaceC).toBeGreaterThan(endOf(1)?.surfaceC ?? 999);
    expect(endOf(3)?.surfaceC).toBeGreaterThan(endOf(2)?.surfaceC ?? 999);
  });
});

describe('what the picture tells', () => {
  const coreAfter = (press: Partial<Press>): number => pressHair({ ...wet, ...press }).at(-1)?.coreC ?? 0;

  it('keeps the core at the boiling point while water is left in it, wherever that is', () => {
    for (const altitudeM of [0, 2000]) {
      const boilingC = computeBoilingPoint(altitudeM);
      for (const { coreC, waterLeft } of pressHair({ ...wet, boilingC })) {
        if (waterLeft > 0.2) expect(coreC).toBeLessThanOrEqual(boilingC + 1e-9);
      }
    }
  });

  it('heats a fine section through and leaves the middle of a thick one cool', () => {
    const dry = { regain: 0.1, contactS: 3 };
    expect(coreAfter({ ...dry, thicknessMm: 1 })).toBeGreaterThan(coreAfter({ ...dry, thicknessMm: 2 }));
    expect(coreAfter({ ...dry, thicknessMm: 2 })).toBeGreaterThan(coreAfter({ ...dry, thicknessMm: 6 }));
  });

  it('is never cooler with a hotter plate, a longer press or less water', () => {
    const one = { thicknessMm: 2, contactS: 4, regain: 0.2 };
    expect(coreAfter({ ...one, plateC: celsius(210) })).toBeGreaterThanOrEqual(
      coreAfter({ ...one, plateC: celsius(180) }),
    );
    expect(coreAfter({ ...one, contactS: 6 })).toBeGreaterThanOrEqual(coreAfter(one));
    expect(coreAfter({ ...one, regain: 0.1 })).toBeGreaterThanOrEqual(coreAfter(one));
  });

  it('reckoned twice as fine ends within 4 °C and 1 % of the water, whatever is pressed at 200 °C, once or four times', () => {
    let lastDrops = 0;
    const choices = ASSUMED_SECTIONS_MM.flatMap((thicknessMm) =>
      ASSUMED_ON_PLACE_S.flatMap((contactS) =>
        Object.values(ASSUMED_REGAIN).flatMap((regain) =>
          [1, ASSUMED_MOST_PRESSES].map((presses) => ({ ...wet, thicknessMm, contactS, regain, presses })),
        ),
      ),
    );
    for (const press of choices) {
      const coarse = pressHair(press).at(-1) as PressMoment;
      const fine = pressHair(press, { cells: 96, steps: 1920 }).at(-1) as PressMoment;
      const told = `${JSON.stringify(press)}: ${JSON.stringify(coarse)}, ${JSON.stringify(fine)}`;
      expect(Math.abs(coarse.waterLeft - fine.waterLeft), told).toBeLessThan(0.01);
      expect(Math.abs(coarse.surfaceC - fine.surfaceC), told).toBeLessThan(4);
      // With its last drop the middle leaves the boiling point at once: there a hundredth of the time is 20 °C.
      const isLastDrop = (coarse.waterLeft === 0) !== (fine.waterLeft === 0);
      if (isLastDrop) lastDrops += 1;
      expect(Math.abs(coarse.coreC - fine.coreC), told).toBeLessThan(isLastDrop ? 20 : 4);
    }
    expect([choices.length, lastDrops]).toEqual([96, 1]);
  });

  it.each([
    ['dry', 0],
    ['full of water', 0.3],
  ] as const)(
    'reckoned twice as fine moves the core by less than 3 °C and the surface by less than 4 °C on average: %s',
    (_, regain) => {
      for (const thicknessMm of [1, 3, 8]) {
        const coarse = pressHair({ ...wet, thicknessMm, regain });
        const fine = pressHair({ ...wet, thicknessMm, regain }, { cells: 96, steps: 1920 });
        const later = coarse.flatMap((each, at) => {
          const same = fine[at * 2];
          return at < coarse.length / 20 || same === undefined ? [] : [{ each, same }];
        });
        const core = Math.max(...later.map(({ each, same }) => Math.abs(each.coreC - same.coreC)));
        const surface = later.map(({ each, same }) => Math.abs(each.surfaceC - same.surfaceC));
        const mean = surface.reduce((sum, each) => sum + each, 0) / surface.length;
        expect(later.length).toBeGreaterThan(900);
        expect(core, `core of ${thicknessMm} mm`).toBeLessThan(3);
        expect(mean, `surface of ${thicknessMm} mm`).toBeLessThan(4);
      }
    },
  );
});
