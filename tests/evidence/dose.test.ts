import { describe, expect, it } from 'vitest';
import type { HeatHabit } from '../../shared/heat/habit';
import { computeProfile } from '../../shared/heat/profile';
import { exactly } from '../../shared/units/range';
import { allKnown, pinned, twoYearsWet } from '../shared/heat/histories';
import { fullHead, places } from '../speed/fullHead';
import { stepWeekly } from '../speed/stepWeekly';
import { checkFigure } from './check';

/** Adaptive Simpson quadrature: halves each piece until both halves agree, jumps included. */
function integrate(f: (t: number) => number, from: number, to: number, tolerance: number): number {
  const simpson = (a: number, b: number) => ((b - a) / 6) * (f(a) + 4 * f((a + b) / 2) + f(b));
  const piece = (a: number, b: number, whole: number, depth: number): number => {
    const middle = (a + b) / 2;
    const left = simpson(a, middle);
    const right = simpson(middle, b);
    if (depth === 0 || (depth < 40 && Math.abs(left + right - whole) < (tolerance * (b - a)) / (to - from))) {
      return left + right;
    }
    return piece(a, middle, left, depth - 1) + piece(middle, b, right, depth - 1);
  };
  return piece(from, to, simpson(from, to), 46);
}

const GAS = 8.31446261815324;
const atK = (celsius: number) => celsius + 273.15;
const line = (celsius: number, one: readonly [number, number], other: readonly [number, number]) => {
  const energy = (GAS * Math.log(other[1] / one[1])) / (1 / atK(one[0]) - 1 / atK(other[0]));
  return one[1] * Math.exp((energy / GAS) * (1 / atK(one[0]) - 1 / atK(celsius)));
};
/** Written out anew from the sources, so that nothing of the station's own arithmetic is checked against itself. */
const ratesAt = (hairC: number, multiplier: number) => ({
  tryptophan: line(hairC, [132, -Math.log(0.725) / 12], [152, -Math.log(0.5) / 12]),
  helix: (Math.LN2 / 22.5) * Math.exp((80_000 / GAS) * (1 / atK(200) - 1 / atK(hairC))) * multiplier,
});

const habits: readonly (readonly [HeatHabit, number])[] = [
  [twoYearsWet, 2],
  [
    { ...twoYearsWet, tool: 'wand', wetness: 'damp', settingC: 180, weeks: 30.25, stoppedWeeksAgo: 13.5 },
    1.5,
  ],
  [{ ...twoYearsWet, wetness: 'dry', settingC: 230, daysAWeek: 1, weeks: 200, stoppedWeeksAgo: 70 }, 1],
];

/** What these habits do to hair in the week that lies so many weeks ago. */
const doneAt = (weeksAgo: number) => {
  const done = { contact: 0, tryptophan: 0, helix: 0 };
  for (const [habit, multiplier] of habits) {
    const { stoppedWeeksAgo, weeks, daysAWeek, secondsASection, settingC, tool } = habit as Required<
      typeof habit
    > &
      Record<'stoppedWeeksAgo' | 'weeks' | 'daysAWeek' | 'secondsASection' | 'settingC', number>;
    if (weeksAgo < stoppedWeeksAgo || weeksAgo > stoppedWeeksAgo + weeks) continue;
    const minutes = (daysAWeek * secondsASection) / 60;
    const contact = tool === 'flatIron' ? (minutes * 2.54) / 30 : minutes;
    const rates = ratesAt(settingC - 20, multiplier);
    done.contact += contact;
    done.tryptophan += contact * rates.tryptophan;
    done.helix += contact * rates.helix;
  }
  return done;
};

describe('the dose along the strand', () => {
  const source =
    'EVIDENCE: rates as published, integrated numerically over the weeks in which that hair was there';

  it.each([0.5, 3, 3.375, 7, 15, 17.5, 22.1, 26, 30, 45, 80])('at %d cm is what quadrature finds', (cm) => {
    const history = { ...allKnown, habits: habits.map(([habit]) => habit) };
    const [hair] = computeProfile(history, [cm], pinned);
    const over = (name: 'contact' | 'tryptophan' | 'helix') =>
      integrate((weeksAgo) => doneAt(weeksAgo)[name], 0, cm / 0.25, 1e-9);
    const checks = [
      ['contact minutes', hair?.contactMin.typical, over('contact')],
      ['tryptophan left', hair?.tryptophanLeft.typical, Math.exp(-over('tryptophan'))],
      ['helix left', hair?.helixLeft.typical, Math.exp(-over('helix'))],
    ] as const;
    for (const [input, got, expected] of checks) {
      const tolerance = 1e-7 * Math.max(1, expected);
      checkFigure({ input: `${input} at ${cm} cm`, got: got ?? Number.NaN, expected, tolerance, source });
    }
  });

  it('agrees with stepping week by week to 1e-6 in every account, of habits that are known and of those that are not', () => {
    const closed = computeProfile(fullHead, places);
    const stepped = stepWeekly(fullHead, places);
    const endOf = { least: 'low', typical: 'typical', most: 'high' } as const;
    const leftOf = { least: 'high', typical: 'typical', most: 'low' } as const;
    for (const account of ['least', 'typical', 'most'] as const) {
      for (const [index, hair] of closed.entries()) {
        const step = stepped[account][index];
        if (step === undefined) throw new Error('no such place');
        const pairs = [
          [hair.ironMin[endOf[account]], step.iron],
          [hair.contactMin[endOf[account]], step.contact],
          [hair.tryptophanLeft[leftOf[account]], Math.exp(-step.tryptophan)],
          [hair.helixLeft[leftOf[account]], Math.exp(-step.helix)],
          [hair.matrixLeft[leftOf[account]], Math.exp(-step.matrix)],
        ] as const;
        for (const [got, expected] of pairs) {
          const input = `place ${index}, ${account}`;
          checkFigure({ input, got, expected, tolerance: 1e-6 * Math.max(1, expected), source: 'stepping' });
        }
      }
    }
    expect(closed.length).toBe(120);
  });
});

describe('312 minutes', () => {
  const source =
    'common practice, no source: one minute a section, three days a week, two years = 312 minutes';

  it('lie on the ends, and half of them where the hair is half as old', () => {
    const [scalp, half, ends] = computeProfile(allKnown, [0, 13, 26], pinned);
    const expected = [
      [scalp, 0],
      [half, 156],
      [ends, 312],
    ] as const;
    for (const [hair, minutes] of expected) {
      const input = `at ${hair?.cm} cm`;
      const got = hair?.ironMin.typical ?? Number.NaN;
      checkFigure({ input, got, expected: minutes, tolerance: 1e-9, source });
      const boils = hair?.boilEquivalents.typical ?? Number.NaN;
      checkFigure({ input: `boils ${input}`, got: boils, expected: minutes / 30, tolerance: 1e-9, source });
    }
  });

  it('grow in proportion to the age in between', () => {
    const all = computeProfile({ ...allKnown, growth: exactly(0.3) }, [3, 6, 12, 24], pinned);
    for (const { cm, ironMin } of all) {
      const expected = 3 * (cm / 0.3);
      checkFigure({ input: `${cm} cm`, got: ironMin.typical, expected, tolerance: 1e-9, source });
    }
  });
});
