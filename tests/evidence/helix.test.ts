import { describe, it } from 'vitest';
import type { Bleach } from '../../shared/chemistry/bleach';
import { type Assumptions, stationAssumptions } from '../../shared/heat/assumptions';
import type { HeatHabit } from '../../shared/heat/habit';
import {
  ASSUMED_HELIX_ENERGY_J,
  ASSUMED_WET_MULTIPLIER,
  computeHelixRate,
  computeHelixSpeedUp,
  HELIX_HALF_LIFE_MIN,
  MATRIX_HALF_TIME_MIN,
} from '../../shared/heat/helix';
import { computeProfile } from '../../shared/heat/profile';
import { computeSpeedUp } from '../../shared/heat/rate';
import { exactly } from '../../shared/units/range';
import { allKnown, twoYearsWet } from '../shared/heat/histories';
import { checkAnswer, checkFigure } from './check';

const source =
  'published: Kinetics of the changes imparted to the main structural components of human hair by thermal treatment, Thermochim. Acta 661:78–83, 2018 (abstract)';

/** A tool that stays, one minute of contact a week, dry, at the papers' 200 °C. */
const aMinuteAWeek: HeatHabit = {
  ...twoYearsWet,
  tool: 'wand',
  wetness: 'dry',
  daysAWeek: 1,
  stoppedWeeksAgo: 0,
};
const noGap: Assumptions = { ...stationAssumptions, gapC: () => exactly(0) };

/** Helix left, %, after contact with a 200 °C iron in this end of the published range. */
const leftAfter = (seconds: readonly number[], end: 'low' | 'high') => {
  const rate = computeHelixRate(HELIX_HALF_LIFE_MIN)[end];
  const speedUp = computeHelixSpeedUp(exactly(200), ASSUMED_HELIX_ENERGY_J)[end];
  return seconds.reduce((left, part) => left * Math.exp((-rate * speedUp * part) / 60), 100);
};

describe('the helix under a 200 °C iron', () => {
  it.each([
    [100, 94.4, 95.5],
    [800, 63, 69.1],
  ])('after %d s of contact is left by %d to %d %%', (seconds, low, high) => {
    const least = { input: `${seconds} s, %`, got: leftAfter([seconds], 'high'), expected: low };
    checkFigure({ ...least, tolerance: 0.05, source });
    const most = { input: `${seconds} s, %`, got: leftAfter([seconds], 'low'), expected: high };
    checkFigure({ ...most, tolerance: 0.05, source });
  });

  it('loses the same in one piece, in eighty and in a hundred and sixty', () => {
    const once = leftAfter([800], 'high');
    for (const [times, each] of [
      [80, 10],
      [160, 5],
    ] as const) {
      const got = leftAfter(
        Array.from({ length: times }, () => each),
        'high',
      );
      checkFigure({ input: `${times} × ${each} s, %`, got, expected: once, tolerance: 1e-9, source });
    }
  });

  it('has its half-life and the matrix its half-times as printed', () => {
    const got = { ...HELIX_HALF_LIFE_MIN, ...MATRIX_HALF_TIME_MIN };
    const expected = { low: 20, typical: 22.5, high: 25, untreated: 5, bleached: 1 };
    checkAnswer({ input: 'minutes of contact', got, expected, source });
  });

  it('brings the matrix of bleached hair as near its limit in a minute as that of untreated hair in five', () => {
    const minutes = (weeks: number): HeatHabit => ({ ...aMinuteAWeek, weeks });
    const once = { weeksAgo: exactly(100), place: 'all', sureness: 'told' } as const;
    const left = (habit: HeatHabit, bleaches: readonly Bleach[]) =>
      computeProfile({ ...allKnown, habits: [habit], bleaches }, [30], noGap)[0]?.matrixLeft.typical ??
      Number.NaN;
    const half = { expected: 0.5, tolerance: 1e-9, source };
    checkFigure({ input: '5 min at 200 °C, untreated', got: left(minutes(5), []), ...half });
    checkFigure({ input: '1 min at 200 °C, bleached', got: left(minutes(1), [once]), ...half });
    checkFigure({
      input: '1 min at 200 °C, untreated',
      got: left(minutes(1), []),
      ...half,
      expected: 2 ** -0.2,
    });
  });
});

describe('water in the hair', () => {
  const christian =
    'published: Christian, Winsey, Whatmough, Cornwell, J. Cosmet. Sci. 62:15–27, 2011, Table III (break stress, ×10⁻² gf/µm²)';
  /** Lost of the break stress, %, before and after ironing. */
  const lostOf = (before: number, after: number) => 100 * (1 - after / before);

  it('took twice as much of the break stress as ethanol did: the assumed typical multiplier', () => {
    const wet = lostOf(2.04, 1.56);
    const dry = lostOf(2.04, 1.8);
    checkFigure({
      input: 'water-based spray, %',
      got: wet,
      expected: 23.5,
      tolerance: 0.05,
      source: christian,
    });
    checkFigure({
      input: 'ethanol-based spray, %',
      got: dry,
      expected: 11.8,
      tolerance: 0.05,
      source: christian,
    });
    const { low, typical, high } = ASSUMED_WET_MULTIPLIER;
    checkFigure({
      input: 'wet to dry',
      got: wet / dry,
      expected: typical,
      tolerance: 0.01,
      source: christian,
    });
    checkAnswer({ input: 'the assumed ends', got: [low, high], expected: [1, 4], source: 'assumed' });
  });
});

describe('the energy that carries it to other temperatures', () => {
  const straightening =
    'published: Dussaud, Rana, Lam, J. Cosmet. Sci. 64:119–131, 2013: 10 cycles at 144 °C ≈ 5 at 154 °C ≈ 1–2 at 175 °C';
  const inCyclesAt154 = (cycles: number, celsius: number, energyJ: number) =>
    cycles * computeSpeedUp(energyJ, 154, celsius);

  it.each([
    [10, 122, 1.6],
    [10, 144, 5.8],
    [5, 154, 5],
    [2, 175, 5.7],
  ])('makes %d cycles at %d °C worth %d at 154 °C', (cycles, celsius, expected) => {
    const got = inCyclesAt154(cycles, celsius, ASSUMED_HELIX_ENERGY_J.typical);
    const source = `arithmetic at the assumed 80 kJ/mol; ${straightening}`;
    checkFigure({ input: `${cycles} × ${celsius} °C`, got, expected, tolerance: 0.05, source });
  });

  it('holds the three equal ones within a factor of 1.2, and the first below them all', () => {
    const worth = (energyJ: number) =>
      [
        [10, 144],
        [5, 154],
        [2, 175],
      ].map(([cycles, celsius]) => inCyclesAt154(cycles ?? 0, celsius ?? 0, energyJ));
    const { typical } = ASSUMED_HELIX_ENERGY_J;
    const spread = Math.max(...worth(typical)) / Math.min(...worth(typical));
    checkAnswer({ input: `spread ${spread}`, got: spread <= 1.2, expected: true, source: straightening });
    const weak = inCyclesAt154(10, 122, typical);
    const isBelow = weak < Math.min(...worth(typical));
    checkAnswer({ input: `10 × 122 °C: ${weak}`, got: isBelow, expected: true, source: straightening });
  });

  it('is bounded by them: from 69 kJ/mol, where two at 175 °C are worth ten at 144, to 122, where one is', () => {
    const energyOf = (one: readonly [number, number], other: readonly [number, number]) => {
      const [cycles, celsius] = one;
      const [fewer, hotter] = other;
      const inverse = 1 / (celsius + 273.15) - 1 / (hotter + 273.15);
      return (8.31446261815324 * Math.log(cycles / fewer)) / inverse / 1_000;
    };
    const all = [
      energyOf([10, 144], [5, 154]),
      energyOf([5, 154], [2, 175]),
      energyOf([5, 154], [1, 175]),
      energyOf([10, 144], [2, 175]),
      energyOf([10, 144], [1, 175]),
    ];
    const expected = { low: 69, high: 122 };
    const source = `computed from ${straightening}`;
    checkFigure({
      input: 'lowest, kJ/mol',
      got: Math.min(...all),
      expected: expected.low,
      tolerance: 0.5,
      source,
    });
    checkFigure({
      input: 'highest, kJ/mol',
      got: Math.max(...all),
      expected: expected.high,
      tolerance: 0.5,
      source,
    });
    const { low, high } = ASSUMED_HELIX_ENERGY_J;
    checkAnswer({ input: 'the assumed ends, J/mol', got: [low, high], expected: [69_000, 122_000], source });
  });
});
