import { describe, it } from 'vitest';
import { MINUTES_A_BOIL } from '../../shared/heat/boil';
import { ASSUMED_PLATE_WIDTH_CM, DEFAULT_SECONDS_A_SECTION, type HeatHabit } from '../../shared/heat/habit';
import { isPassShortEnough, LONGEST_PASS_SECONDS } from '../../shared/heat/passes';
import { computeProfile } from '../../shared/heat/profile';
import { type HeatThresholdId, listThresholdsMet, wetToolSettings } from '../../shared/heat/thresholds';
import { brand } from '../../shared/units/brand';
import { type Inch, toCentimetres } from '../../shared/units/length';
import { exactly } from '../../shared/units/range';
import { type Fahrenheit, toCelsius } from '../../shared/units/temperature';
import { toWeeks } from '../../shared/units/time';
import { checkAnswer, checkFigure } from './check';

const source = 'common practice, no source';

/** A minute a section, three days a week, for two years, on wet hair. */
const twoYearsWet: HeatHabit = {
  tool: 'flatIron',
  wetness: 'wet',
  daysAWeek: 3,
  weeks: toWeeks(24),
  stoppedWeeksAgo: 0,
  secondsASection: DEFAULT_SECONDS_A_SECTION,
  passes: 'unknown',
  settingC: toCelsius(brand<Fahrenheit>(400)),
  plateWidthCm: ASSUMED_PLATE_WIDTH_CM,
};

/** What these habits come to on hair that is older than any of them: one inch of plate on ten inches. */
const onOldHair = (habit: HeatHabit) => {
  const lengthCm = toCentimetres(brand<Inch>(10));
  const [hair] = computeProfile(
    {
      habits: [habit],
      bleaches: [],
      growth: exactly(0.05),
      lengthCm: exactly(lengthCm),
      pigment: 'pigmented',
    },
    [lengthCm],
  );
  if (hair === undefined) throw new Error('no hair');
  return hair;
};

const meets = (settingF: number, id: HeatThresholdId, wetness: 'wet' | 'dry' = 'wet') =>
  listThresholdsMet(toCelsius(brand<Fahrenheit>(settingF)), wetness).includes(id);

describe('iron minutes', () => {
  it('of one minute a section, three days a week, two years are 312', () => {
    const { low, typical, high } = onOldHair(twoYearsWet).ironMin;
    for (const got of [low, typical, high]) {
      checkFigure({ input: '1 min × 3 days × 104 weeks', got, expected: 312, tolerance: 0, source });
    }
  });

  it('reckon a section as one minute unless told otherwise', () => {
    const input = 'default seconds a section';
    checkFigure({ input, got: DEFAULT_SECONDS_A_SECTION, expected: 60, tolerance: 0, source });
  });
});

describe('boil equivalents', () => {
  it('are one for half an hour of wet ironing', () => {
    checkFigure({ input: 'wet minutes', got: MINUTES_A_BOIL, expected: 30, tolerance: 0, source });
    const half = { ...twoYearsWet, weeks: 10 };
    const got = onOldHair(half).boilEquivalents.typical;
    checkFigure({ input: '30 wet minutes', got, expected: 1, tolerance: 0, source });
  });

  it('of 312 minutes of wet ironing are 10.4', () => {
    const { low, typical, high } = onOldHair(twoYearsWet).boilEquivalents;
    for (const got of [low, typical, high]) {
      checkFigure({ input: '312 wet minutes', got, expected: 10.4, tolerance: 1e-12, source });
    }
  });

  it('of the same ironing on dry hair are none', () => {
    const got = onOldHair({ ...twoYearsWet, wetness: 'dry' }).boilEquivalents.high;
    checkFigure({ input: '312 dry minutes', got, expected: 0, tolerance: 0, source });
  });
});

describe('settings', () => {
  it('of 212 °F boil water at sea level, and of 211 °F do not', () => {
    checkAnswer({ input: '212 °F', got: meets(212, 'waterBoils'), expected: true, source });
    checkAnswer({ input: '211 °F', got: meets(211, 'waterBoils'), expected: false, source });
  });

  it('of tools sold for wet hair run from 375 to 420 °F', () => {
    const input = 'settings of tools sold for wet hair, °F';
    checkFigure({ input, got: wetToolSettings.from, expected: 375, tolerance: 0, source });
    checkFigure({ input, got: wetToolSettings.to, expected: 420, tolerance: 0, source });
  });

  it('of every tool sold for wet hair lie above the boil and where pores begin', () => {
    const pores = 'published: Gamez-Garcia, J. Cosmet. Sci. 62:109–120, 2011';
    for (let settingF: number = wetToolSettings.from; settingF <= wetToolSettings.to; settingF += 1) {
      const input = `${settingF} °F on wet hair`;
      checkAnswer({ input, got: meets(settingF, 'waterBoils'), expected: true, source });
      checkAnswer({ input, got: meets(settingF, 'poresBegin'), expected: true, source: pores });
      checkAnswer({ input, got: meets(settingF, 'poresRiseFast'), expected: true, source: pores });
    }
  });

  it.each([
    [399, false],
    [400, true],
    [401, true],
  ])('of %d °F soften the cortex: %s', (settingF, expected) => {
    for (const wetness of ['wet', 'dry'] as const) {
      const got = meets(settingF, 'cortexSoftens', wetness);
      checkAnswer({ input: `${settingF} °F, ${wetness}`, got, expected, source });
    }
  });

  it.each([
    [450, false],
    [451, true],
    [452, true],
  ])('of %d °F burn hair: %s', (settingF, expected) => {
    for (const wetness of ['wet', 'dry'] as const) {
      const got = meets(settingF, 'hairBurns', wetness);
      checkAnswer({ input: `${settingF} °F, ${wetness}`, got, expected, source });
    }
  });

  it('of tools sold for wet hair reach the softening at their hot end only, and never burn', () => {
    checkAnswer({
      input: '375 °F',
      got: meets(wetToolSettings.from, 'cortexSoftens'),
      expected: false,
      source,
    });
    checkAnswer({ input: '420 °F', got: meets(wetToolSettings.to, 'cortexSoftens'), expected: true, source });
    checkAnswer({ input: '420 °F', got: meets(wetToolSettings.to, 'hairBurns'), expected: false, source });
  });
});

describe('a pass', () => {
  it.each([
    [9.9, true],
    [10, true],
    [10.1, false],
    [0, false],
    [-1, false],
    [Number.NaN, false],
  ])('of %d s is done in time: %s', (seconds, expected) => {
    checkAnswer({ input: `a pass of ${seconds} s`, got: isPassShortEnough(seconds), expected, source });
  });

  it('of 10 s with a one-inch plate over ten inches touches each centimetre for one second', () => {
    const onePass = { ...twoYearsWet, daysAWeek: 1, weeks: 1, secondsASection: LONGEST_PASS_SECONDS };
    const contact = onOldHair(onePass).contactMin;
    const exact = 'exact: plate width ÷ length ironed';
    const input = '10 s, 1 in over 10 in, in seconds';
    checkFigure({ input, got: contact.typical * 60, expected: 1, tolerance: 1e-12, source: exact });
  });

  it('of 10 s with a tool that stays touches for all ten', () => {
    const onePass = { ...twoYearsWet, daysAWeek: 1, weeks: 1, secondsASection: LONGEST_PASS_SECONDS };
    const contact = onOldHair({ ...onePass, tool: 'wand' }).contactMin;
    checkFigure({ input: '10 s hold', got: contact.typical * 60, expected: 10, tolerance: 1e-12, source });
  });

  it('fits six times into the minute a section', () => {
    const got = DEFAULT_SECONDS_A_SECTION / LONGEST_PASS_SECONDS;
    checkFigure({ input: '60 s in passes of 10 s', got, expected: 6, tolerance: 0, source });
  });
});
