import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  ASSUMED_DAYS_A_WEEK,
  ASSUMED_SECONDS_A_SECTION,
  ASSUMED_WEEKS,
} from '../../../shared/heat/assumedHabit';
import {
  computeBoilEquivalents,
  computeContactMinutes,
  computeContactShare,
  computeIronMinutes,
  hasShortPasses,
  sumExposure,
} from '../../../shared/heat/exposure';
import {
  ASSUMED_PLATE_WIDTH_CM,
  type HeatHabit,
  isGliding,
  isIron,
  type Tool,
} from '../../../shared/heat/habit';
import { brand } from '../../../shared/units/brand';
import type { Centimetre, Inch } from '../../../shared/units/length';
import { toCentimetres } from '../../../shared/units/length';
import { exactly, type Range } from '../../../shared/units/range';
import { holds, numberBetween } from '../seeded';

const told: HeatHabit = {
  tool: 'flatIron',
  wetness: 'wet',
  daysAWeek: 3,
  weeks: 104,
  secondsASection: 60,
  passes: 6,
  settingC: 200,
  plateWidthCm: ASSUMED_PLATE_WIDTH_CM,
};
const tools: readonly Tool[] = ['flatIron', 'curlingIron', 'wand', 'hotBrush', 'rollers', 'dryer', 'other'];
const orUnknown = (min: number, max: number) =>
  fc.oneof(numberBetween(min, max), fc.constant('unknown' as const));
const anyHabit: fc.Arbitrary<HeatHabit> = fc.record({
  tool: fc.constantFrom(...tools),
  wetness: fc.constantFrom('wet', 'damp', 'dry', 'unknown'),
  daysAWeek: orUnknown(0, 7),
  weeks: orUnknown(0, 1_500),
  secondsASection: orUnknown(0, 600),
  passes: orUnknown(1, 30),
  settingC: orUnknown(40, 250),
  plateWidthCm: numberBetween(0.5, 10),
});
const tenInches = toCentimetres(brand<Inch>(10));

const expectOrdered = ({ low, typical, high }: Range) => {
  expect(low).toBeGreaterThanOrEqual(0);
  expect(typical).toBeGreaterThanOrEqual(low);
  expect(high).toBeGreaterThanOrEqual(typical);
};

const expectNear = (got: Range, expected: Range) => {
  for (const end of ['low', 'typical', 'high'] as const) {
    expect(Math.abs(got[end] - expected[end])).toBeLessThanOrEqual(1e-9 * Math.max(1, expected[end]));
  }
};

describe('passes', () => {
  it('never count twice: the seconds of a section are those of all its passes', () => {
    holds(
      fc.property(anyHabit, orUnknown(1, 30), (habit, passes) => {
        expect(computeIronMinutes({ ...habit, passes })).toEqual(computeIronMinutes(habit));
      }),
    );
  });

  it('are short when each takes ten seconds at most, and not known to be where anything is not told', () => {
    expect(hasShortPasses(told)).toBe(true);
    expect(hasShortPasses({ ...told, passes: 5 })).toBe(false);
    expect(hasShortPasses({ ...told, passes: 'unknown' })).toBe(false);
    expect(hasShortPasses({ ...told, secondsASection: 'unknown' })).toBe(false);
    expect(hasShortPasses({ ...told, tool: 'wand' })).toBe(false);
    expect(hasShortPasses({ ...told, secondsASection: 0 })).toBe(false);
  });
});

describe('the tools', () => {
  it('are all irons but the dryer, and only the flat iron glides', () => {
    expect(tools.filter((tool) => !isIron(tool))).toEqual(['dryer']);
    expect(tools.filter(isGliding)).toEqual(['flatIron']);
  });
});

describe('iron minutes', () => {
  it('are exact for a habit that was told, and none for a dryer', () => {
    expect(computeIronMinutes(told)).toEqual(exactly(312));
    expect(computeIronMinutes({ ...told, tool: 'dryer' })).toEqual(exactly(0));
  });

  it('are none where she said zero, even when the rest is not known', () => {
    expect(computeIronMinutes({ ...told, daysAWeek: 0, weeks: 'unknown' })).toEqual(exactly(0));
    expect(computeIronMinutes({ ...told, weeks: 0, daysAWeek: 'unknown' })).toEqual(exactly(0));
    expect(computeIronMinutes({ ...told, secondsASection: 0 })).toEqual(exactly(0));
  });

  it.each(['daysAWeek', 'weeks', 'secondsASection'] as const)(
    'are wide and never none for unknown %s',
    (asked) => {
      const unknown = computeIronMinutes({ ...told, [asked]: 'unknown' });
      expect(unknown.low).toBeGreaterThan(0);
      expect(unknown.typical).toBe(312);
      expect(unknown.high).toBeGreaterThan(unknown.typical);
    },
  );

  it.each([-1, Number.NaN, Number.POSITIVE_INFINITY])(
    'take a figure that cannot be (%d) as not known',
    (figure) => {
      expect(computeIronMinutes({ ...told, daysAWeek: figure })).toEqual(
        computeIronMinutes({ ...told, daysAWeek: 'unknown' }),
      );
    },
  );

  it('span the whole of what is assumed when nothing was told', () => {
    const { low, high } = computeIronMinutes({
      ...told,
      daysAWeek: 'unknown',
      weeks: 'unknown',
      secondsASection: 'unknown',
    });
    const product = (end: 'low' | 'high') =>
      (ASSUMED_DAYS_A_WEEK[end] * ASSUMED_WEEKS[end] * ASSUMED_SECONDS_A_SECTION[end]) / 60;
    expect(low).toBeCloseTo(product('low'), 9);
    expect(high).toBeCloseTo(product('high'), 9);
  });

  it('never fall when a day, a week or a second is added', () => {
    const more = numberBetween(0, 100);
    holds(
      fc.property(
        numberBetween(0, 7),
        numberBetween(0, 500),
        numberBetween(0, 600),
        more,
        (days, weeks, seconds, by) => {
          const habit = { ...told, daysAWeek: days, weeks, secondsASection: seconds };
          const before = computeIronMinutes(habit).typical;
          expect(computeIronMinutes({ ...habit, daysAWeek: days + by }).typical).toBeGreaterThanOrEqual(
            before,
          );
          expect(computeIronMinutes({ ...habit, weeks: weeks + by }).typical).toBeGreaterThanOrEqual(before);
          expect(
            computeIronMinutes({ ...habit, secondsASection: seconds + by }).typical,
          ).toBeGreaterThanOrEqual(before);
        },
      ),
    );
  });
});

describe('contact minutes', () => {
  it('are the plate’s share of the length for a gliding iron, and all of it for one that stays', () => {
    expectNear(computeContactMinutes(told, tenInches), exactly(31.2));
    expectNear(computeContactMinutes({ ...told, plateWidthCm: 5.08 }, tenInches), exactly(62.4));
    expect(computeContactMinutes({ ...told, tool: 'wand' }, tenInches)).toEqual(exactly(312));
  });

  it('count all of it where the plate covers the length or a figure cannot be', () => {
    const share = (plateWidthCm: number, lengthCm: number) =>
      computeContactShare({ tool: 'flatIron', plateWidthCm }, brand<Centimetre>(lengthCm));
    expect(share(2.54, 2.54)).toBe(1);
    expect(share(2.54, 2)).toBe(1);
    expect(share(2.54, 2.55)).toBeLessThan(1);
    for (const odd of [0, -1, Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(share(odd, 20)).toBe(1);
      expect(share(2.54, odd)).toBe(1);
    }
  });

  it('do not depend on the unit of width and length', () => {
    holds(
      fc.property(numberBetween(0.5, 2), numberBetween(2, 30), (widthIn, lengthIn) => {
        const plateWidthCm = toCentimetres(brand<Inch>(widthIn));
        const share = computeContactShare(
          { tool: 'flatIron', plateWidthCm },
          toCentimetres(brand<Inch>(lengthIn)),
        );
        expect(share).toBeCloseTo(widthIn / lengthIn, 12);
      }),
    );
  });

  it('are never more than iron minutes', () => {
    holds(
      fc.property(anyHabit, numberBetween(1, 100), (habit, lengthCm) => {
        const contact = computeContactMinutes(habit, brand<Centimetre>(lengthCm));
        expectOrdered(contact);
        expect(contact.high).toBeLessThanOrEqual(computeIronMinutes(habit).high);
      }),
    );
  });
});

describe('the sum of habits', () => {
  it('is nothing for no habit', () => {
    const none = exactly(0);
    expect(sumExposure([])).toEqual({ wet: none, damp: none, dry: none, boilEquivalents: none });
  });

  it('puts each told habit under its own wetness', () => {
    const sum = sumExposure([
      told,
      { ...told, wetness: 'dry', weeks: 52 },
      { ...told, wetness: 'damp', weeks: 26 },
    ]);
    expect(sum.wet).toEqual(exactly(312));
    expect(sum.dry).toEqual(exactly(156));
    expect(sum.damp).toEqual(exactly(78));
    expect(sum.boilEquivalents).toEqual(exactly(10.4));
  });

  it('lets unknown wetness be none of each at least, a third likely and all of it at most', () => {
    const sum = sumExposure([{ ...told, wetness: 'unknown' }]);
    for (const part of [sum.wet, sum.damp, sum.dry]) expectNear(part, { low: 0, typical: 104, high: 312 });
    expectNear(sum.boilEquivalents, { low: 0, typical: 104 / 30, high: 10.4 });
  });

  it('keeps order, and its typical figures make the typical total', () => {
    holds(
      fc.property(fc.array(anyHabit, { maxLength: 8 }), (habits) => {
        const { wet, damp, dry, boilEquivalents } = sumExposure(habits);
        for (const range of [wet, damp, dry, boilEquivalents]) expectOrdered(range);
        const total = habits.reduce((sum, habit) => sum + computeIronMinutes(habit).typical, 0);
        expect(wet.typical + damp.typical + dry.typical).toBeCloseTo(total, 5);
        expectNear(boilEquivalents, computeBoilEquivalents(wet));
      }),
    );
  });

  it('is the same whether habits are summed at once or in two halves, in any order', () => {
    const some = fc.array(anyHabit, { maxLength: 4 });
    holds(
      fc.property(some, some, (a, b) => {
        const [one, two] = [sumExposure(a), sumExposure(b)];
        const [both, turned] = [sumExposure([...a, ...b]), sumExposure([...b, ...a])];
        for (const part of ['wet', 'damp', 'dry', 'boilEquivalents'] as const) {
          const halves = {
            low: one[part].low + two[part].low,
            typical: one[part].typical + two[part].typical,
            high: one[part].high + two[part].high,
          };
          expectNear(both[part], halves);
          expectNear(turned[part], halves);
        }
      }),
    );
  });

  it('never falls for one habit more', () => {
    holds(
      fc.property(fc.array(anyHabit, { maxLength: 7 }), anyHabit, (habits, another) => {
        const [before, after] = [sumExposure(habits), sumExposure([...habits, another])];
        for (const part of ['wet', 'damp', 'dry', 'boilEquivalents'] as const) {
          expect(after[part].low).toBeGreaterThanOrEqual(before[part].low);
          expect(after[part].high).toBeGreaterThanOrEqual(before[part].high);
        }
      }),
    );
  });
});
