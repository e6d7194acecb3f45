/** At which movement of the hand, or at which step, is it heeded? In the order of a day. */
export const cautionMoments = ['skinTest', 'mixing', 'onHer', 'ifItBurns', 'heat', 'home'] as const;
export type CautionMoment = (typeof cautionMoments)[number];

/** What the law, the trade's regulators or the trade itself ask to be heeded. It stops nothing: stops stand in rules.ts. */
export interface StatedCaution {
  readonly when: CautionMoment;
  readonly source: string;
}

const training = 'common practice, no source: training texts; the maker’s method comes first';
const practice = 'common practice, no source';
const burns = 'published: burn first-aid guidance';
const persulfates = 'published: Pang & Fiume, Int. J. Toxicol. 20(S3):7–21, 2001, and clinical reports';

/**
 * Every caution there is, by id; its words stand in src/words under the same id.
 * Checked in tests/shared/judgement/cautions.test.ts.
 */
export const statedCautions = {
  testEachTime: { when: 'skinTest', source: 'published: FDA, Hair dyes (advice)' },
  makersProtocol: {
    when: 'skinTest',
    source: 'published: Cosmetics Europe 2023; that repeating may sensitise is one toxicologist’s opinion',
  },
  neverMeansSafe: {
    when: 'skinTest',
    source: 'published: Coenraads et al., Dermatitis 2018, doi 10.1097/DER.0000000000000405',
  },
  gloves: { when: 'mixing', source: 'published: HSE (UK) hairdressing guidance' },
  ventilation: { when: 'mixing', source: 'published: TRGS 530 (2007 edition, since replaced)' },
  powder: { when: 'mixing', source: 'published: product labels; Nielsen et al., J. Occup. Health 2016' },
  bowlAndLid: { when: 'mixing', source: 'published: product labels; common practice' },
  metalSalts: { when: 'mixing', source: training },
  lashesAndBrows: { when: 'onHer', source: 'published: U.S. FD&C Act §601(a), 21 U.S.C. 361(a)' },
  persulfates: { when: 'onHer', source: persulfates },
  noDryer: { when: 'onHer', source: `${burns}, case reports` },
  relaxedLately: { when: 'onHer', source: practice },
  breathFirst: { when: 'ifItBurns', source: persulfates },
  rinseNow: { when: 'ifItBurns', source: burns },
  eyes: { when: 'ifItBurns', source: 'published: product labels; Nielsen et al., J. Occup. Health 2016' },
  noSpray: { when: 'heat', source: 'published: product labels; common practice' },
  ironsStayHot: { when: 'heat', source: 'published: J. Burn Care Res. 29:650–654, 2008' },
  restFromHeat: { when: 'home', source: 'assumed: two days let it settle through a wash' },
  lateItching: { when: 'home', source: practice },
  pregnancy: { when: 'home', source: 'from memory: health-service advice, read second hand' },
} as const satisfies Record<string, StatedCaution>;

export type StatedCautionId = keyof typeof statedCautions;

/** Which are heeded then, in their order? */
export const listCautions = (when: CautionMoment): readonly StatedCautionId[] =>
  (Object.keys(statedCautions) as StatedCautionId[]).filter((id) => statedCautions[id].when === when);
