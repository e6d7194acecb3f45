import type { ConsultationEvent } from '../../shared/records/event';
import { type WayStep, waySteps } from '../../shared/records/steps';
import { msPerMinute } from '../../shared/units/time';
import { advance, beginConsultation, type ConsultationState } from '../consultation/consultation';

/** Where on the way is she? null while nobody sits there, and when she is stopped or it is over. */
function findStep({ value }: Pick<ConsultationState, 'value'>): WayStep | null {
  if (typeof value === 'string') return null;
  const { way } = value.open;
  const name = typeof way === 'object' ? 'strandTest' : way;
  return waySteps.find((step) => step === name) ?? null;
}

/** How many minutes of the lesson's clock went by at each step? In the order of the way; steps she was never at are left out. */
export function countMinutesAStep(
  log: readonly ConsultationEvent[],
): readonly { readonly step: WayStep; readonly minutes: number }[] {
  const spentMs = new Map<WayStep, number>();
  let consultation = beginConsultation('practice');
  for (const event of log) {
    const step = findStep(consultation.state);
    const passedMs = Math.max(0, event.atMs - consultation.record.newestAtMs);
    if (step !== null) spentMs.set(step, (spentMs.get(step) ?? 0) + passedMs);
    const next = advance(consultation, event);
    if (!next.ok) break;
    consultation = next.value;
  }
  return waySteps.flatMap((step) => {
    const ms = spentMs.get(step);
    return ms === undefined ? [] : [{ step, minutes: ms / msPerMinute }];
  });
}
