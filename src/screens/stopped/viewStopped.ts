import { findTestRefusal } from '../../../shared/judgement/permitRefusal';
import { type RuleId, rules } from '../../../shared/judgement/rules';
import type { ConsultationRecord } from '../../../shared/records/record';
import type { Settings } from '../../../shared/records/settings';
import type { Correctable } from '../../../shared/records/steps';

/** A stop that stands, and the answer whose named correction takes it back. */
export interface StandingStop {
  readonly rule: RuleId;
  readonly answer: Correctable;
}

const answerOf = (rule: RuleId): Correctable => {
  if (rule === 'stop.skinTestPositive') return 'skinTest';
  if (rule === 'stop.incompatibilityReacted') return 'incompatibility';
  return rules[rule].step ?? 'inherited';
};

/** Which stops hold her, and what was answered for each? Checked in tests/src/screens/app.test.tsx. */
export function listStandingStops(record: ConsultationRecord, settings: Settings): readonly StandingStop[] {
  const refusal = findTestRefusal(record, settings);
  if (refusal?.code !== 'stopped') return [];
  return refusal.rules.map((rule) => ({ rule, answer: answerOf(rule) }));
}

/** The answers that may be corrected now, each once. */
export const listCorrectable = (stops: readonly StandingStop[]): readonly Correctable[] => [
  ...new Set(stops.map(({ answer }) => answer)),
];
