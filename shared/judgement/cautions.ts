/** At which movement of the hand, or at which step, is it heeded? In the order of a day. */
export const cautionMoments = [
  'before',
  'skinTest',
  'glass',
  'mixing',
  'onHer',
  'ifItBurns',
  'heat',
  'home',
] as const;
export type CautionMoment = (typeof cautionMoments)[number];

/** What the law, the trade's regulators or the trade itself ask to be heeded. It stops nothing: stops stand in rules.ts. */
export interface StatedCaution {
  readonly when: CautionMoment;
  readonly source: string;
}

const training = 'common practice, no source: training texts; the maker’s method comes first';
const practice = 'common practice, no source';
const labels = `${practice}: it stands on product labels`;
const firstAid = 'from memory: burn first-aid guidance';
const persulfates = 'published: Pang & Fiume, Int. J. Toxicol. 20(S3):7–21, 2001';
const labelText = 'published: Reg. (EC) 1223/2009 Annex III label text';

/**
 * Every caution there is, by id; its words stand in src/words under the same id. "Published" only where the source is
 * known by author, title or journal, and year; what a label or a guidance says without them is practice or memory.
 * Checked in tests/shared/judgement/cautions.test.ts.
 */
export const statedCautions = {
  reactedEver: { when: 'before', source: labelText },
  blackTattoo: { when: 'before', source: labelText },
  skinToday: { when: 'before', source: `${labelText}; burns: common practice` },
  underAge: { when: 'before', source: labelText },
  persulfates: { when: 'before', source: persulfates },
  testEachTime: { when: 'skinTest', source: 'from memory: FDA, Hair dyes (advice)' },
  makersProtocol: {
    when: 'skinTest',
    source:
      'published: Cosmetics Europe 2023; that repeating may sensitise is the opinion of one toxicologist',
  },
  neverMeansSafe: {
    when: 'skinTest',
    source: 'published: Coenraads et al., Dermatitis 2018, doi 10.1097/DER.0000000000000405',
  },
  metalSalts: { when: 'glass', source: training },
  poolWater: { when: 'glass', source: training },
  glassAndGoggles: { when: 'glass', source: training },
  keptCutting: { when: 'glass', source: training },
  gloves: { when: 'mixing', source: 'from memory: HSE (UK) hairdressing guidance' },
  ventilation: { when: 'mixing', source: 'published: TRGS 530 (2007 edition, since replaced)' },
  powder: {
    when: 'mixing',
    source: 'published: Nielsen et al., J. Occup. Health 2016; lid, scoop and goggles: common practice',
  },
  bowlAndLid: { when: 'mixing', source: labels },
  lashesAndBrows: { when: 'onHer', source: 'published: U.S. FD&C Act §601(a), 21 U.S.C. 361(a)' },
  noDryer: { when: 'onHer', source: `${firstAid}, case reports` },
  relaxedLately: { when: 'onHer', source: practice },
  breathFirst: { when: 'ifItBurns', source: `${persulfates}; the order: common practice` },
  rinseNow: { when: 'ifItBurns', source: firstAid },
  eyes: { when: 'ifItBurns', source: labels },
  noSpray: { when: 'heat', source: labels },
  ironsStayHot: { when: 'heat', source: 'published: J. Burn Care Res. 29:650–654, 2008' },
  restFromHeat: { when: 'home', source: 'assumed: two days let it settle through a wash' },
  lateItching: { when: 'home', source: practice },
  pregnancy: { when: 'home', source: 'from memory: health-service advice, read second hand' },
} as const satisfies Record<string, StatedCaution>;

export type StatedCautionId = keyof typeof statedCautions;

/** Which are heeded then, in their order? */
export const listCautions = (when: CautionMoment): readonly StatedCautionId[] =>
  (Object.keys(statedCautions) as StatedCautionId[]).filter((id) => statedCautions[id].when === when);
