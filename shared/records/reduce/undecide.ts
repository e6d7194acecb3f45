import { isOfDecision } from '../../judgement/rules';
import type { ConsultationRecord } from '../record';

/** Takes the decision back, and with it the leave to decide or to weigh more freely. */
export const undecide = (record: ConsultationRecord): Pick<ConsultationRecord, 'decision' | 'overrides'> => ({
  decision: null,
  overrides: record.overrides.filter(({ rule }) => !isOfDecision(rule)),
});
