import { describe, expect, it } from 'vitest';
import {
  ASSUMED_BLEACHES_SUSPECT,
  ASSUMED_FLAGS_FOR_HIGH,
  findLookEveryMin,
  judgeRisk as judgeRiskOf,
  listRedFlags,
  type RedFlag,
  redFlags,
  risks,
} from '../../../shared/judgement/risk';
import { MODEL_VERSION } from '../../../shared/records/event';
import type { Answers } from '../../../shared/records/forms/asked';
import { ironTold } from '../hair/told';

const judgeRisk = (told: Answers) => judgeRiskOf({ answers: told, modelVersion: MODEL_VERSION });

interface Said {
  readonly habits?: readonly {
    readonly tool: string;
    readonly wetness: string;
    readonly settingC?: number | 'unknown';
  }[];
  readonly smoke?: string;
  readonly bleaches?: number | 'unknown';
  readonly porosity?: string;
  readonly curl?: string;
  readonly wetStretch?: string;
  readonly breakage?: string;
}
const answers = ({ habits = [], smoke = 'no', bleaches = 0, ...felt }: Said): Answers =>
  ({
    hotTools: { habits: habits.map((habit) => ({ ...ironTold, ...habit })), smoke, bleaches },
    feelHair: { porosity: 'normal', curl: 'sameAlong', wetStretch: 'springsBack', breakage: 'no', ...felt },
  }) as unknown as Answers;
const ironed = (wetness: string, tool = 'flatIron', settingC: number | 'unknown' = 180): Said => ({
  habits: [{ tool, wetness, settingC }],
});

/** 400 °F, above which the cortex softens: common practice, no source. */
const softensC = ((400 - 32) * 5) / 9;

/** For each flag (all common practice, no source): what raises it, and the nearest that does not. */
const edges: readonly (readonly [RedFlag, readonly Said[], readonly Said[]])[] = [
  [
    'ironedWet',
    [ironed('wet'), ironed('damp'), ironed('unknown'), ironed('wet', 'wand')],
    [ironed('dry'), ironed('wet', 'dryer'), {}],
  ],
  ['scorched', [{ smoke: 'smokes' }, { smoke: 'smellsBurnt' }], [{ smoke: 'no' }]],
  [
    'bleachedTwice',
    [{ bleaches: ASSUMED_BLEACHES_SUSPECT }, { bleaches: 20 }, { bleaches: 'unknown' }],
    [{ bleaches: ASSUMED_BLEACHES_SUSPECT - 1 }, { bleaches: 0 }],
  ],
  ['curlLost', [{ curl: 'lostAtEnds' }], [{ curl: 'straight' }, { curl: 'sameAlong' }]],
  ['slowStretch', [{ wetStretch: 'staysLong' }, { wetStretch: 'snaps' }], [{ wetStretch: 'springsBack' }]],
  ['breakage', [{ breakage: 'some' }, { breakage: 'much' }], [{ breakage: 'no' }]],
  [
    'veryHot',
    [ironed('dry', 'flatIron', softensC + 0.01), ironed('dry', 'wand', 232)],
    [ironed('dry', 'flatIron', softensC), ironed('dry', 'dryer', 232)],
  ],
  [
    'notKnown',
    [
      { smoke: 'unknown' },
      { curl: 'unknown' },
      { breakage: 'unknown' },
      { wetStretch: 'unknown' },
      { porosity: 'unknown' },
      ironed('dry', 'flatIron', 'unknown'),
      { smoke: 'unknown', curl: 'unknown' },
    ],
    [{}, { porosity: 'high' }, ironed('dry', 'dryer', 'unknown')],
  ],
];

describe('red flags', () => {
  it('are all tried here', () => expect(edges.map(([flag]) => flag)).toEqual(redFlags));

  it.each(edges)('%s is raised, alone, and not beside its edge', (flag, raising, beside) => {
    for (const said of raising) expect(listRedFlags(answers(said)), JSON.stringify(said)).toEqual([flag]);
    for (const said of beside) expect(listRedFlags(answers(said)), JSON.stringify(said)).toEqual([]);
  });

  it('count one wet habit among dry ones, and a flag once', () => {
    const habits = [...(ironed('dry').habits ?? []), ...(ironed('wet').habits ?? [])];
    expect(listRedFlags(answers({ habits: [...habits, ...habits] }))).toEqual(['ironedWet']);
  });

  it('are none where nothing was said yet', () => expect(listRedFlags({})).toEqual([]));
});

describe('the risk', () => {
  /** One way to raise each flag but "not known", which lies in the same answers; every set is a subset of these. */
  const ways: Said[] = edges.filter(([flag]) => flag !== 'notKnown').map(([, [first]]) => first ?? {});
  const subsets = Array.from({ length: 2 ** ways.length }, (_, bits) =>
    ways.filter((_way, index) => (bits >> index) % 2 === 1),
  );
  /** All of these said together: habits add up, and what is not known does not hide what is. */
  const join = (all: readonly Said[]): Said => ({
    ...Object.assign({}, ...[...all].reverse()),
    habits: all.flatMap(({ habits = [] }) => habits),
  });

  it('is low with no flag, raised with one, high with two or more (ASSUMED), for all 128 sets of flags', () => {
    expect(subsets).toHaveLength(128);
    for (const subset of subsets) {
      const risk = judgeRisk(answers(join(subset)));
      const expected =
        subset.length === 0 ? 'low' : subset.length < ASSUMED_FLAGS_FOR_HIGH ? 'raised' : 'high';
      expect(risk, JSON.stringify(subset)).toBe(expected);
    }
  });

  it('is raised by something that is not known, and high when that comes to another flag or another "don’t know"', () => {
    expect(judgeRisk(answers({ curl: 'unknown' }))).toBe('raised');
    expect(judgeRisk(answers({ curl: 'unknown', smoke: 'smokes' }))).toBe('high');
    expect(judgeRisk(answers({ curl: 'unknown', smoke: 'unknown' }))).toBe('high');
  });

  it('is raised or high by the chance alone, where no flag or one is up', () => {
    const relaxed = {
      hotTools: { habits: [], smoke: 'no', history: ['relaxer', 'metallicColour', 'keratin'] },
    };
    const felt = answers({ porosity: 'high' });
    const noFlag = { ...felt, ...relaxed } as unknown as Answers;
    expect(listRedFlags(noFlag)).toEqual([]);
    expect(judgeRisk(noFlag)).toBe('raised');
    const oneFlag = { ...answers({ porosity: 'high', breakage: 'much' }), ...relaxed } as unknown as Answers;
    expect(listRedFlags(oneFlag)).toEqual(['breakage']);
    expect(judgeRisk(oneFlag)).toBe('high');
  });

  /** Every answer to each thing the risk looks at, "don't know" last. */
  const said: readonly (readonly Said[])[] = [
    [{ smoke: 'no' }, { smoke: 'smokes' }, { smoke: 'unknown' }],
    [{ bleaches: 0 }, { bleaches: ASSUMED_BLEACHES_SUSPECT }, { bleaches: 'unknown' }],
    [{ porosity: 'normal' }, { porosity: 'high' }, { porosity: 'unknown' }],
    [{ curl: 'sameAlong' }, { curl: 'lostAtEnds' }, { curl: 'unknown' }],
    [{ breakage: 'no' }, { breakage: 'much' }, { breakage: 'unknown' }],
    [{ wetStretch: 'springsBack' }, { wetStretch: 'snaps' }, { wetStretch: 'unknown' }],
    [ironed('dry'), ironed('wet'), ironed('unknown')],
    [ironed('dry', 'wand', 180), ironed('dry', 'wand', 232), ironed('dry', 'wand', 'unknown')],
  ];
  const combinations = said.reduce<readonly (readonly number[])[]>(
    (found, options) => found.flatMap((chosen) => options.map((_said, index) => [...chosen, index])),
    [[]],
  );
  const riskOf = (chosen: readonly number[]) =>
    risks.indexOf(judgeRisk(answers(join(chosen.map((index, at) => said[at]?.[index] ?? {})))));

  it('never falls when somebody does not know what she might have said, whatever else is known or not', () => {
    let compared = 0;
    for (const chosen of combinations) {
      const before = riskOf(chosen);
      for (const [at, index] of chosen.entries()) {
        if (index === 2) continue;
        compared += 1;
        expect(riskOf(chosen.with(at, 2)), JSON.stringify([chosen, at])).toBeGreaterThanOrEqual(before);
      }
    }
    console.log(`${combinations.length} combinations of answers, ${compared} times less was known`);
    expect(compared).toBe(combinations.length * said.length * (2 / 3));
  });

  it('never falls when one more flag is raised', () => {
    for (const subset of subsets) {
      for (const way of ways) {
        const before = judgeRisk(answers(join(subset)));
        const after = judgeRisk(answers(join([...subset, way])));
        expect(risks.indexOf(after)).toBeGreaterThanOrEqual(risks.indexOf(before));
      }
    }
  });

  it('asks for a look every 3 minutes when raised or high, else every 5 (common practice, no source)', () =>
    expect(risks.map(findLookEveryMin)).toEqual(['5', '3', '3']));
});
