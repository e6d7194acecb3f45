import { describe, expect, it } from 'vitest';
import {
  ASSUMED_DAYS_A_WEEK,
  ASSUMED_SECONDS_A_SECTION,
  ASSUMED_SETTING_C,
  ASSUMED_WEEKS,
} from '../../../../shared/heat/assumedHabit';
import { TRYPTOPHAN_MOST_MEASURED } from '../../../../shared/heat/tryptophan';
import {
  ASSUMED_BLEACHES_WORST,
  ASSUMED_NOT_KNOWN,
  type CovariateName,
  findWeakestHair,
  readCovariates,
} from '../../../../shared/judgement/chance/covariates';
import { judgeChance } from '../../../../shared/judgement/chance/judgeChance';
import type { Answers } from '../../../../shared/records/forms/asked';
import { ironTold } from '../../hair/told';

const hair = (hotTools: object = {}, feelHair: object = {}, client: object = {}): Answers =>
  ({
    client: { reach: 'fullHead', length: 'collarbone', service: 'lighten', greyPercent: 0, ...client },
    hotTools: { habits: [], smoke: 'no', history: ['none'], ...hotTools },
    feelHair: {
      porosity: 'normal',
      curl: 'sameAlong',
      wetStretch: 'springsBack',
      breakage: 'no',
      ...feelHair,
    },
  }) as unknown as Answers;
const ironed = (change: object) => hair({ habits: [{ ...ironTold, ...change }] });

/** Of each: nothing of it, some of it where it has degrees, the worst, and not known. */
const told: readonly (readonly [CovariateName, readonly Answers[], Answers])[] = [
  [
    'ironedWet',
    [{ wetness: 'dry' }, { wetness: 'damp' }, { wetness: 'wet' }].map(ironed),
    ironed({ wetness: 'unknown' }),
  ],
  ['veryHot', [ironed({ settingC: 200 }), ironed({ settingC: 230 })], ironed({ settingC: 'unknown' })],
  ['scorched', [hair(), hair({ smoke: 'smellsBurnt' })], hair({ smoke: 'unknown' })],
  [
    'bleaches',
    [0, 1, ASSUMED_BLEACHES_WORST].map((bleaches) => hair({ history: ['lightener'], bleaches })),
    hair({ history: ['lightener'], bleaches: 'unknown' }),
  ],
  ['curlLost', [hair(), hair({}, { curl: 'lostAtEnds' })], hair({}, { curl: 'unknown' })],
  [
    'slowStretch',
    ['springsBack', 'staysLong', 'snaps'].map((wetStretch) => hair({}, { wetStretch })),
    hair({}, { wetStretch: 'unknown' }),
  ],
  [
    'porous',
    [hair({}, { porosity: 'low' }), hair({}, { porosity: 'high' })],
    hair({}, { porosity: 'unknown' }),
  ],
  [
    'breakage',
    ['no', 'some', 'much'].map((breakage) => hair({}, { breakage })),
    hair({}, { breakage: 'unknown' }),
  ],
  ['smoothing', [hair(), hair({ history: ['keratin'] })], hair({ history: ['unknown'] })],
  [
    'relaxer',
    [hair(), hair({ history: ['perm'] }), hair({ history: ['relaxer'] })],
    hair({ history: ['unknown'] }),
  ],
  [
    'strangeColour',
    [hair({ history: ['salonColour'] }), hair({ history: ['metallicColour'] })],
    hair({ history: ['unknown'] }),
  ],
];

describe('what her answers come to', () => {
  it.each(told)(
    '%s rises from nothing to the worst, and "don’t know" is never less (ASSUMED)',
    (name, rising, notKnown) => {
      const values = rising.map((answers) => readCovariates(answers)[name].value);
      expect(values[0]).toBe(0);
      expect(values.at(-1)).toBe(1);
      for (const [at, value] of values.entries())
        if (at > 0) expect(value).toBeGreaterThan(values[at - 1] ?? 1);
      expect(readCovariates(notKnown)[name]).toEqual(ASSUMED_NOT_KNOWN);
      const bad = rising.at(-1);
      expect(judgeChance(notKnown).chance).toBeGreaterThanOrEqual(judgeChance(bad ?? {}).chance);
    },
  );

  it('are the helix and tryptophan lost at the weakest place where the colour goes, with the width of their bands', () => {
    const answers = ironed({ settingC: 200 });
    const weakest = findWeakestHair(answers, ['lengths', 'ends']);
    const { helixLost, tryptophanLost } = readCovariates(answers);
    expect(helixLost.value).toBeCloseTo(1 - (weakest?.helixLeft.typical ?? 0), 12);
    expect(helixLost.spread).toBeGreaterThan(0);
    expect(1 - (weakest?.tryptophanLeft.typical ?? 0)).toBeGreaterThan(TRYPTOPHAN_MOST_MEASURED);
    expect(tryptophanLost).toMatchObject({ value: 1, isBeyond: true });
    const seldom = ironed({ settingC: 130, daysAWeek: 0.25, forMonths: 1, secondsASection: 10 });
    const little = readCovariates(seldom).tryptophanLost;
    const left = findWeakestHair(seldom, ['lengths', 'ends'])?.tryptophanLeft.typical ?? 0;
    expect(little.value).toBeCloseTo((1 - left) / TRYPTOPHAN_MOST_MEASURED, 12);
    expect(little.value).toBeLessThan(1);
    expect(little.isBeyond).toBeUndefined();
    // 0.12 a minute for 15 min: published range, McMullen & Jachowicz, J. Cosmet. Sci. 49:223–244, 1998.
    expect(TRYPTOPHAN_MOST_MEASURED).toBeCloseTo(0.8347, 4);
    const roots = readCovariates({ ...answers, client: { ...answers.client, reach: 'roots' } } as Answers);
    expect(roots.helixLost.value).toBeLessThan(helixLost.value);
  });

  it('are nothing where nothing was asked yet, and sound hair is told as sound', () => {
    for (const answers of [{}, hair()]) {
      expect(Object.values(readCovariates(answers)).every(({ value }) => value === 0)).toBe(true);
      expect(judgeChance(answers).word).toBe('low');
    }
  });
});

const WEEKS_A_MONTH = 30.4375 / 7;
const inMonths = ({ low, typical, high }: typeof ASSUMED_WEEKS) =>
  [low, typical, high].map((weeks) => weeks / WEEKS_A_MONTH);
const ends = ({ low, typical, high }: typeof ASSUMED_WEEKS) => [low, typical, high];

describe('what is not known of a habit', () => {
  it.each([
    ['secondsASection', ends(ASSUMED_SECONDS_A_SECTION), [10, 30, 60, 90, 120, 300, 600]],
    ['daysAWeek', ends(ASSUMED_DAYS_A_WEEK), [0.25, 1, 3, 5, 7]],
    ['forMonths', inMonths(ASSUMED_WEEKS), [0.25, 3, 12, 24, 60]],
    ['settingC', ends(ASSUMED_SETTING_C), [120, 150, 180, 200, 230, 250]],
  ] as const)(
    '%s weighs no less than any usual answer, and each answer no less than a smaller one',
    (name, usual, rising) => {
      for (const wetness of ['dry', 'wet']) {
        const reckon = (told: number | 'unknown') =>
          ironed({ wetness, daysAWeek: 1, forMonths: 6, [name]: told });
        const notKnown = readCovariates(reckon('unknown'));
        for (const told of usual) {
          const known = readCovariates(reckon(told));
          for (const loss of ['helixLost', 'tryptophanLost'] as const)
            expect(notKnown[loss].value, `${loss} ${told}`).toBeGreaterThanOrEqual(known[loss].value - 1e-12);
          expect(judgeChance(reckon('unknown')).chance).toBeGreaterThanOrEqual(
            judgeChance(reckon(told)).chance - 1e-12,
          );
        }
        const chances = rising.map((told) => judgeChance(reckon(told)).chance);
        for (const [at, chance] of chances.entries())
          if (at > 0)
            expect(chance, `${wetness} ${rising[at]}`).toBeGreaterThanOrEqual((chances[at - 1] ?? 1) - 1e-12);
        expect(chances.at(-1)).toBeGreaterThan(chances[0] ?? 1);
      }
    },
  );
});

describe('the chance of a head of hair (ASSUMED)', () => {
  it('is low for hair ironed dry each day, raised when it is ironed wet, high when bleached twice besides', () => {
    const bleached = { history: ['lightener'], bleaches: 2 };
    const dry = { ...ironTold, wetness: 'dry', settingC: 180 };
    expect(judgeChance(hair({ habits: [dry] })).word).toBe('low');
    expect(judgeChance(ironed({ daysAWeek: 7 })).word).toBe('raised');
    expect(judgeChance(hair({ habits: [{ ...ironTold }], ...bleached })).word).toBe('high');
  });

  it('is high where everything is not known', () => {
    const nobodyKnows = hair(
      { smoke: 'unknown', history: ['unknown'], bleaches: 'unknown' },
      { porosity: 'unknown', curl: 'unknown', wetStretch: 'unknown', breakage: 'unknown' },
    );
    expect(judgeChance(nobodyKnows).word).toBe('high');
  });
});
