import { judgeStep } from '../../../shared/judgement/stops';
import type { ConsultationRecord } from '../../../shared/records/record';
import type { Settings } from '../../../shared/records/settings';
import { askSteps, type WayStep } from '../../../shared/records/steps';
import { listStanding } from '../leaving/whatFalls';

/**
 * Does this step stand as it was said, wherever she is now? Going back to read takes nothing away: what was answered
 * stays, and so does a strand that stands for what is planned. Checked in tests/src/screens/goingBack.test.tsx.
 */
export function isSaidAlready(step: WayStep, record: ConsultationRecord, settings: Settings): boolean {
  if (step === 'strandTest') return listStanding(record).some(({ outcome }) => outcome !== null);
  const asked = askSteps.find((each) => each === step);
  if (asked === undefined) return false;
  const said = judgeStep(asked, record.answers, settings, record.modelVersion);
  return said === 'clean' || said === 'judgement';
}
