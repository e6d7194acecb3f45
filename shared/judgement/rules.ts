import type { AskStep } from '../records/steps';

/** A stop: absolute has no override; judgement is lifted by a named person with a reason, for this service. */
export interface Rule {
  readonly kind: 'absolute' | 'judgement';
  /** Which step's answers raise it; null for what is read or decided rather than asked. */
  readonly step: AskStep | null;
  readonly source: string;
  /** The model version that first knew it: what an older one let happen is not refused by it. */
  readonly addedIn?: number;
}

const label = 'published: Reg. (EC) 1223/2009 Annex III label text';

/** Every stop there is, by id. Its words stand in src/words under the same id. */
export const rules = {
  'stop.reactionEver': { kind: 'absolute', step: 'client', source: label },
  'stop.anyReaction': { kind: 'absolute', step: 'client', source: `${label}, read strictly by this house` },
  'stop.persulfateReaction': {
    kind: 'absolute',
    step: 'client',
    source: 'published: Pang & Fiume, Int. J. Toxicol. 20(S3):7–21, 2001',
  },
  'stop.blackTattoo': { kind: 'absolute', step: 'client', source: label },
  'stop.scalpBroken': { kind: 'absolute', step: 'client', source: label },
  'stop.faceRash': { kind: 'absolute', step: 'client', source: label },
  'stop.underAge': { kind: 'absolute', step: 'client', source: `${label}: not meant for under 16` },
  'stop.skinTestPositive': { kind: 'absolute', step: null, source: label },
  'stop.incompatibilityReacted': {
    kind: 'absolute',
    step: null,
    source: 'common practice, no source; the maker’s method comes first',
  },
  'stop.inherited': { kind: 'absolute', step: null, source: 'an earlier record of the same ticket' },
  'judgement.tingled': { kind: 'judgement', step: 'client', source: 'common practice, no source' },
  'judgement.scalpTight': { kind: 'judgement', step: 'client', source: 'common practice, no source' },
  'judgement.relaxedRecently': { kind: 'judgement', step: 'hotTools', source: 'common practice, no source' },
  'judgement.relaxerThenLightener': {
    kind: 'judgement',
    step: 'hotTools',
    source: 'common practice, no source',
  },
  'judgement.relaxerAndPerm': {
    kind: 'judgement',
    step: 'hotTools',
    source: 'common practice, no source',
    addedIn: 4,
  },
  'judgement.snapsWhenWet': { kind: 'judgement', step: 'feelHair', source: 'common practice, no source' },
  'judgement.onScalp': {
    kind: 'judgement',
    step: null,
    source: 'common practice, no source; the maker’s directions come first',
    addedIn: 5,
  },
  'judgement.freerThanSuggested': {
    kind: 'judgement',
    step: null,
    source: 'ASSUMED: the table is an estimate, a named person may know better',
  },
} as const satisfies Record<string, Rule>;

export type RuleId = keyof typeof rules;
export const ruleIds = Object.keys(rules) as RuleId[];

/** Did a model of this version know this stop already? */
export function isKnownTo(modelVersion: number, id: RuleId): boolean {
  const { addedIn = 1 }: Rule = rules[id];
  return addedIn <= modelVersion;
}

/** Is it judged of what was decided? Then it is judged anew with every decision. */
export const isOfDecision = (id: RuleId): boolean =>
  rules[id].kind === 'judgement' && rules[id].step === null;

/** Is there no override for this rule? */
export const isAbsoluteRule = (id: RuleId): boolean => rules[id].kind === 'absolute';
