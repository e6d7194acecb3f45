import { findTestRefusal } from '../../../shared/judgement/permitRefusal';
import type { RuleId, rules } from '../../../shared/judgement/rules';
import type { ConsultationRecord } from '../../../shared/records/record';
import type { Settings } from '../../../shared/records/settings';
import type { Correctable } from '../../../shared/records/steps';

/** A stop that stands, and the answer whose named correction takes it back. */
export interface StandingStop {
  readonly rule: RuleId;
  readonly answer: Correctable;
}

type AbsoluteRuleId = {
  [R in RuleId]: (typeof rules)[R]['kind'] extends 'absolute' ? R : never;
}[RuleId];

/** Which answer raised it? Told for every stop there is, or it does not compile. */
const answers: Readonly<Record<AbsoluteRuleId, Correctable>> = {
  'stop.reactionEver': 'client',
  'stop.anyReaction': 'client',
  'stop.persulfateReaction': 'client',
  'stop.blackTattoo': 'client',
  'stop.scalpBroken': 'client',
  'stop.faceRash': 'client',
  'stop.underAge': 'client',
  'stop.skinTestPositive': 'skinTest',
  'stop.incompatibilityReacted': 'incompatibility',
  'stop.inherited': 'inherited',
};

const isAbsolute = (rule: RuleId): rule is AbsoluteRuleId => Object.hasOwn(answers, rule);

/** Which stops hold her, and what was answered for each? Checked in tests/src/screens/app.test.tsx. */
export function listStandingStops(record: ConsultationRecord, settings: Settings): readonly StandingStop[] {
  const refusal = findTestRefusal(record, settings);
  if (refusal?.code !== 'stopped') return [];
  return refusal.rules.filter(isAbsolute).map((rule) => ({ rule, answer: answers[rule] }));
}

/** The answers that may be corrected now, each once. */
export const listCorrectable = (stops: readonly StandingStop[]): readonly Correctable[] => [
  ...new Set(stops.map(({ answer }) => answer)),
];
