import type { Consultation } from '../../../machines/consultation/consultation';
import { formPlanKey } from '../../../shared/records/planKey';
import type { ConsultationRecord, StrandRecord } from '../../../shared/records/record';
import type { AskStep } from '../../../shared/records/steps';

/** Strands that stand for what is planned now: whatever runs or was read, as long as nothing took it away. */
export const listStanding = ({ strands, answers }: ConsultationRecord): readonly StrandRecord[] => {
  const planKey = formPlanKey(answers);
  return strands.filter(
    (strand) => !strand.isVoid && strand.ended?.how !== 'discarded' && strand.planKey === planKey,
  );
};

/** Does going back itself cost anything? A decision falls; strands stay until an answer is changed, which asks first. */
export const costsToGoBack = ({ record }: Pick<Consultation, 'record'>): boolean => record.decision !== null;

/** Which strands would stand no more, were this step answered so? Put back, they stand again. */
export function listFalling(
  record: ConsultationRecord,
  step: AskStep,
  answers: Readonly<Record<string, unknown>>,
): readonly StrandRecord[] {
  const after = formPlanKey({ ...record.answers, [step]: answers });
  return after === formPlanKey(record.answers) ? [] : listStanding(record);
}
