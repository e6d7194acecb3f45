import type { ConsultationRecord } from '../record';

/** Takes the decision back, and with it the leave to decide more freely than suggested. */
export const undecide = (record: ConsultationRecord): Pick<ConsultationRecord, 'decision' | 'overrides'> => ({
  decision: null,
  overrides: record.overrides.filter(({ rule }) => rule !== 'judgement.freerThanSuggested'),
});
