import { describe, expect, it } from 'vitest';
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
    expect(tryptophanLost.value).toBeCloseTo(1 - (weakest?.tryptophanLeft.typical ?? 0), 12);
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
