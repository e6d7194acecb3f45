import { askSteps } from '../../../shared/records/steps';
import { HoldButton } from '../../parts/HoldButton';
import { Refusal } from '../../parts/Refusal';
import { useWords } from '../../parts/useWords';
import { isOpenNow } from '../isOpenNow';
import { screenOf } from '../screenOf';
import { createSender } from '../sender';
import type { StepProps } from '../stepProps';

const callOff = { type: 'CALLED_OFF', answers: { reason: 'startedByMistake' } } as const;

/**
 * May she be called off as started by mistake? Only while nothing but questions came to pass: no glass, no strand, no
 * bowl, and no stop that would be closed with her. A skin test stays in its own record. Checked in tests/src/screens/startedByMistake.test.tsx.
 */
export function isNothingDone({
  consultation,
  settings,
  nowMs,
}: Pick<StepProps, 'consultation' | 'settings' | 'nowMs'>): boolean {
  const { record, state } = consultation;
  const isAsking = askSteps.some((step) => step === screenOf(state));
  const isUntouched =
    record.incompatibility === null &&
    record.reaction === null &&
    record.strands.length === 0 &&
    record.bowls.length === 0;
  return isAsking && isUntouched && isOpenNow(consultation, callOff, settings, nowMs);
}

/** Somebody was started who should not have been: held, since it closes the record. */
export function StartedByMistake(props: StepProps) {
  const words = useWords();
  const sender = createSender(props);
  return (
    <section class="panel leaving-part" data-panel="mistake">
      <h3>{words.leaving.byMistake}</h3>
      <p>{words.leaving.byMistakeLead}</p>
      <div class="options">
        <HoldButton
          label={words.leaving.closeRecord}
          act="close-mistake"
          onHeld={() => void sender.send(callOff)}
        />
      </div>
      <Refusal refusal={sender.refusal()} />
    </section>
  );
}
