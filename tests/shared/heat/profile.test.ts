import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Assumptions, stationAssumptions } from '../../../shared/heat/assumptions';
import { usualGrowth } from '../../../shared/heat/growth';
import type { HeatHabit } from '../../../shared/heat/habit';
import type { HairHistory } from '../../../shared/heat/hairHistory';
import { computeProfile, computeTip, type HairAt } from '../../../shared/heat/profile';
import { exactly, makeRange, type Range } from '../../../shared/units/range';
import { toWeeks } from '../../../shared/units/time';
import { holds, numberBetween } from '../seeded';
import { allKnown, anyHabit, anyHistory, anyPlace, pinned, twoYearsWet } from './histories';

const at = (history: HairHistory, cm: number, assumptions?: Assumptions): HairAt => {
  const [hair] = computeProfile(history, [cm], assumptions);
  if (hair === undefined) throw new Error('no hair');
  return hair;
};
const ends = ['low', 'typical', 'high'] as const;
const minutes = ['ironMin', 'wetMin', 'dampMin', 'dryMin', 'boilEquivalents', 'contactMin'] as const;
const shares = ['tryptophanLeft', 'helixLeft', 'matrixLeft'] as const;

const near = (got: number, expected: number, relative = 1e-9) =>
  expect(Math.abs(got - expected)).toBeLessThanOrEqual(relative * Math.max(1, Math.abs(expected)));
const isOneFigure = ({ low, high }: Range) => low === high;

describe('a band', () => {
  const expectOrdered = (hair: HairAt) => {
    for (const name of [...minutes, ...shares, 'bleaches', 'ageWeeks'] as const) {
      const { low, typical, high } = hair[name];
      if (!(0 <= low && low <= typical && typical <= high)) expect({ name, ...hair[name] }).toBe('a range');
    }
    for (const name of shares) if (hair[name].high > 1) expect({ name, ...hair[name] }).toBe('a share');
  };
  const wholeStrand = Array.from({ length: 120 }, (_, index) => index);

  it('is in order all along the strand, never negative, and no share is more than all', () => {
    holds(
      fc.property(anyHistory, (history) => {
        for (const hair of computeProfile(history, wholeStrand)) expectOrdered(hair);
        expectOrdered(computeTip(history));
      }),
      2_000,
    );
  });

  it.each([2, 5, 7, 10, 13, 17, 20, 23, 26, 29])(
    'is in order for %d months and “don’t know” when she stopped, to the last bit',
    (months) => {
      const habits = [{ ...twoYearsWet, weeks: toWeeks(months), stoppedWeeksAgo: 'unknown' as const }];
      for (const hair of computeProfile({ ...allKnown, growth: usualGrowth, habits }, wholeStrand)) {
        expectOrdered(hair);
      }
    },
  );

  it('is as wide at the tip as the length was told, and no wider by the tape', () => {
    const shorter = { ...allKnown, growth: exactly(0.4), lengthCm: makeRange(20, 30, 40) };
    expect(computeTip(shorter).ironMin).toEqual(makeRange(150, 225, 300));
    expect(computeTip({ ...shorter, lengthCm: exactly(30) }).ironMin).toEqual(exactly(225));
    expect(computeTip(allKnown)).toEqual(at(allKnown, 30));
  });

  it('is wide, and never none, where she doesn’t know', () => {
    for (const asked of ['daysAWeek', 'weeks', 'secondsASection', 'settingC', 'wetness'] as const) {
      const habits = [{ ...twoYearsWet, [asked]: 'unknown' }];
      const hair = at({ ...allKnown, habits }, 30, pinned);
      expect(hair.helixLeft.high, asked).toBeLessThan(1);
      expect(hair.helixLeft.low, asked).toBeLessThan(hair.helixLeft.high);
    }
  });

  it('has no width of its own: with every answer known and every assumption pinned it is one figure', () => {
    const everything: HairHistory = {
      ...allKnown,
      habits: [
        twoYearsWet,
        { ...twoYearsWet, tool: 'wand', wetness: 'damp', stoppedWeeksAgo: 26, settingC: 180 },
      ],
      bleaches: [{ weeksAgo: exactly(30), place: 'all', sureness: 'told' }],
    };
    for (let cm = 0; cm <= 30; cm += 0.5) {
      const hair = at(everything, cm, pinned);
      for (const name of [...minutes, ...shares, 'bleaches', 'ageWeeks'] as const) {
        expect(isOneFigure(hair[name]), `${name} at ${cm} cm`).toBe(true);
      }
    }
  });

  it('of iron and contact minutes is one figure with every answer known, whatever is assumed', () => {
    for (let cm = 0; cm <= 30; cm += 0.5) {
      const hair = at(allKnown, cm);
      for (const name of minutes) expect(isOneFigure(hair[name]), `${name} at ${cm} cm`).toBe(true);
    }
  });

  const opened = {
    growth: { history: { growth: makeRange(0.2, 0.25, 0.3) }, widens: [...minutes, ...shares] },
    gap: { assumptions: { gapC: stationAssumptions.gapC }, widens: shares },
    energy: {
      assumptions: { helixEnergyJ: stationAssumptions.helixEnergyJ },
      widens: ['helixLeft', 'matrixLeft'],
    },
    halfLife: {
      assumptions: { helixHalfLifeMin: stationAssumptions.helixHalfLifeMin },
      widens: ['helixLeft'],
    },
    wetMultiplier: {
      assumptions: { wetMultiplier: stationAssumptions.wetMultiplier },
      widens: ['helixLeft'],
    },
  } as const;

  it.each(Object.entries(opened))(
    'opens by the width of %s alone, where that is all that is open',
    (_name, one) => {
      const history = { ...allKnown, ...('history' in one ? one.history : {}) };
      const assumptions = { ...pinned, ...('assumptions' in one ? one.assumptions : {}) };
      const hair = at(history, 15, assumptions);
      const wide = [...minutes, ...shares].filter((name) => !isOneFigure(hair[name]));
      const expected = [...one.widens].filter((name) => name !== 'dampMin' && name !== 'dryMin');
      expect(wide).toEqual([...minutes, ...shares].filter((name) => expected.some((each) => each === name)));
    },
  );

  it('ends exactly where its one open range ends', () => {
    const growth = makeRange(0.2, 0.25, 0.3);
    const band = at({ ...allKnown, growth }, 15, pinned);
    const slow = at({ ...allKnown, growth: exactly(0.2) }, 15, pinned);
    const fast = at({ ...allKnown, growth: exactly(0.3) }, 15, pinned);
    for (const name of minutes) {
      expect(band[name].high).toBe(slow[name].typical);
      expect(band[name].low).toBe(fast[name].typical);
    }
    for (const name of shares) {
      expect(band[name].low).toBe(slow[name].typical);
      expect(band[name].high).toBe(fast[name].typical);
    }
    for (const [wetMultiplier, end] of [
      [1, 'high'],
      [4, 'low'],
    ] as const) {
      const open = at(allKnown, 15, { ...pinned, wetMultiplier: makeRange(1, 2, 4) });
      const closed = at(allKnown, 15, { ...pinned, wetMultiplier: exactly(wetMultiplier) });
      near(open.helixLeft[end], closed.helixLeft.typical);
    }
  });
});

describe('habits', () => {
  it('count at a place only for the weeks in which that hair existed', () => {
    expect(at(allKnown, 26).ironMin).toEqual(exactly(312));
    expect(at(allKnown, 30).ironMin).toEqual(exactly(312));
    expect(at(allKnown, 13).ironMin).toEqual(exactly(156));
    expect(at(allKnown, 0).ironMin).toEqual(exactly(0));
  });

  it('that stopped before hair grew did it nothing', () => {
    const stopped = { ...allKnown, habits: [{ ...twoYearsWet, weeks: 52, stoppedWeeksAgo: 52 }] };
    expect(at(stopped, 12.9).ironMin).toEqual(exactly(0));
    near(at(stopped, 19.5).ironMin.typical, 78);
    expect(at(stopped, 26).ironMin).toEqual(exactly(156));
  });

  it('that changed add up to the whole, however they are cut', () => {
    holds(
      fc.property(
        anyHistory,
        anyPlace,
        numberBetween(1, 300),
        numberBetween(0, 1),
        (history, cm, weeks, cut) => {
          const whole: HeatHabit = { ...twoYearsWet, weeks, stoppedWeeksAgo: 10 };
          const late = { ...whole, weeks: weeks * cut };
          const early = { ...whole, weeks: weeks * (1 - cut), stoppedWeeksAgo: 10 + weeks * cut };
          const one = at({ ...history, habits: [whole] }, cm);
          const two = at({ ...history, habits: [late, early] }, cm);
          for (const name of [...minutes, ...shares])
            for (const end of ends) near(two[name][end], one[name][end], 1e-8);
        },
      ),
    );
  });

  it('add up: minutes as they are, what is left by multiplication', () => {
    holds(
      fc.property(anyHistory, anyHabit, anyPlace, (history, more, cm) => {
        const bare = { ...history, bleaches: [] };
        const a = at(bare, cm);
        const b = at({ ...bare, habits: [more] }, cm);
        const both = at({ ...bare, habits: [...bare.habits, more] }, cm);
        for (const end of ends) {
          for (const name of minutes) near(both[name][end], a[name][end] + b[name][end]);
          for (const name of shares) near(both[name][end], a[name][end] * b[name][end]);
        }
      }),
    );
  });

  it.each([
    ['longer', { weeks: 1.5 }],
    ['more often', { daysAWeek: 1.5 }],
    ['slower', { secondsASection: 1.5 }],
    ['hotter', { settingC: 1.1 }],
  ] as const)('done %s never do less', (_how, factors) => {
    holds(
      fc.property(
        anyHistory,
        anyPlace,
        numberBetween(40, 220),
        numberBetween(0, 4),
        (history, cm, settingC, days) => {
          const habit = { ...twoYearsWet, settingC, daysAWeek: days };
          const harder = { ...habit };
          for (const [name, factor] of Object.entries(factors)) {
            const key = name as 'weeks';
            harder[key] = (habit[key] as number) * factor;
          }
          const before = at({ ...history, habits: [habit] }, cm);
          const after = at({ ...history, habits: [harder] }, cm);
          for (const end of ends) {
            for (const name of minutes)
              expect(after[name][end]).toBeGreaterThanOrEqual(before[name][end] - 1e-9);
            for (const name of shares)
              expect(after[name][end]).toBeLessThanOrEqual(before[name][end] + 1e-12);
          }
        },
      ),
    );
  });

  it('on wetter hair never do less, and are blind to water where tryptophan is asked', () => {
    holds(
      fc.property(anyHistory, anyPlace, (history, cm) => {
        const [dry, damp, wet] = (['dry', 'damp', 'wet'] as const).map((wetness) =>
          at({ ...history, habits: [{ ...twoYearsWet, wetness }] }, cm),
        ) as [HairAt, HairAt, HairAt];
        for (const end of ends) {
          expect(damp.helixLeft[end]).toBeLessThanOrEqual(dry.helixLeft[end]);
          expect(wet.helixLeft[end]).toBeLessThanOrEqual(damp.helixLeft[end]);
          expect(wet.tryptophanLeft[end]).toBe(dry.tryptophanLeft[end]);
        }
      }),
    );
  });

  it('of unknown wetness lie between dry and wet, and their parts never make less than the whole', () => {
    const unknown = at({ ...allKnown, habits: [{ ...twoYearsWet, wetness: 'unknown' }] }, 30);
    expect(unknown.ironMin).toEqual(exactly(312));
    expect(unknown.wetMin).toEqual(makeRange(0, 104, 312));
    near(unknown.wetMin.typical + unknown.dampMin.typical + unknown.dryMin.typical, 312);
  });

  it('of a dryer take no minutes', () => {
    const dried = at({ ...allKnown, habits: [{ ...twoYearsWet, tool: 'dryer' }] }, 30);
    expect(dried.ironMin).toEqual(exactly(0));
    expect(dried.helixLeft).toEqual(exactly(1));
  });
});

describe('nothing', () => {
  it('in is nothing out', () => {
    holds(
      fc.property(anyHistory, anyPlace, (history, cm) => {
        const hair = at({ ...history, habits: [], bleaches: [] }, cm);
        for (const name of minutes) expect(hair[name]).toEqual(exactly(0));
        for (const name of shares) expect(hair[name]).toEqual(exactly(1));
        expect(hair.isBeyond).toEqual({ tryptophan: false, helix: false });
      }),
    );
  });

  it.each([Number.NaN, -3, Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY])(
    'is what a place of %d cm holds: it is read as the scalp',
    (cm) => expect(at(allKnown, cm).ironMin).toEqual(exactly(0)),
  );
});

describe('bleach', () => {
  const once = { weeksAgo: exactly(40), place: 'all', sureness: 'told' } as const;

  it('takes its published share of the hair that was there, and none of what grew since', () => {
    const history = { ...allKnown, habits: [], bleaches: [once, once] };
    near(at(history, 20).helixLeft.typical, Math.exp(-0.138));
    expect(at(history, 20).bleaches).toEqual(exactly(2));
    expect(at(history, 9.9).helixLeft).toEqual(exactly(1));
    expect(at(history, 10).bleaches).toEqual(exactly(2));
  });

  it('brings the matrix nearer its limit by what was ironed after it, and leaves what was ironed before', () => {
    const bleached = { ...allKnown, bleaches: [once] };
    const before = at(allKnown, 30, pinned);
    const after = at(bleached, 30, pinned);
    expect(after.matrixLeft.typical).toBeLessThan(before.matrixLeft.typical);
    const onlyBefore = [{ ...twoYearsWet, weeks: 60, stoppedWeeksAgo: 40 }];
    const untouched = at({ ...bleached, habits: onlyBefore }, 30, pinned);
    near(
      untouched.matrixLeft.typical,
      at({ ...allKnown, habits: onlyBefore }, 30, pinned).matrixLeft.typical,
    );
  });

  it('never gives anything back', () => {
    holds(
      fc.property(anyHistory, anyPlace, (history, cm) => {
        const without = at({ ...history, bleaches: [] }, cm);
        const withIt = at(history, cm);
        for (const end of ends) {
          expect(withIt.helixLeft[end]).toBeLessThanOrEqual(without.helixLeft[end]);
          expect(withIt.matrixLeft[end]).toBeLessThanOrEqual(without.matrixLeft[end] + 1e-12);
        }
      }),
    );
  });
});

describe('beyond what was measured', () => {
  const gentle: HeatHabit = {
    ...twoYearsWet,
    tool: 'wand',
    wetness: 'dry',
    settingC: 164,
    secondsASection: 10,
    weeks: 1,
  };
  const noGap: Assumptions = { ...pinned, gapC: () => exactly(0) };

  it('is said from the first degree and the first minute outside, and not inside', () => {
    const history = (change: Partial<HeatHabit>) => ({ ...allKnown, habits: [{ ...gentle, ...change }] });
    expect(at(history({}), 30, noGap).isBeyond.tryptophan).toBe(false);
    expect(at(history({ settingC: 164.1 }), 30, noGap).isBeyond.tryptophan).toBe(true);
    expect(at(history({ settingC: 129.9 }), 30, noGap).isBeyond.tryptophan).toBe(true);
    expect(at(history({ weeks: 30 }), 30, noGap).isBeyond.tryptophan).toBe(false);
    expect(at(history({ weeks: 30.1 }), 30, noGap).isBeyond.tryptophan).toBe(true);
    expect(at(history({ settingC: 200 }), 30, noGap).isBeyond.helix).toBe(false);
    expect(at(history({ settingC: 199 }), 30, noGap).isBeyond.helix).toBe(true);
    expect(at(history({ settingC: 200, weeks: 26.6 }), 30, noGap).isBeyond.helix).toBe(false);
    expect(at(history({ settingC: 200, weeks: 26.7 }), 30, noGap).isBeyond.helix).toBe(true);
  });

  it('is said of the helix of any hair that was not dry', () => {
    for (const wetness of ['wet', 'damp', 'unknown'] as const) {
      const habits = [{ ...gentle, settingC: 200, wetness }];
      expect(at({ ...allKnown, habits }, 30, noGap).isBeyond.helix).toBe(true);
    }
  });
});
