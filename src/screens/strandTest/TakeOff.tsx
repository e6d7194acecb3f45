import { Show } from 'solid-js';
import { takenOffForm } from '../../../shared/records/forms/test';
import type { Zone } from '../../../shared/records/zones';
import { BigButton } from '../../parts/BigButton';
import { Refusal } from '../../parts/Refusal';
import { StepPage } from '../../parts/StepPage';
import { useWords } from '../../parts/useWords';
import { createEventForm } from '../eventForm';
import { PartForm } from '../PartForm';
import type { StepProps } from '../stepProps';

const { or: _timeIsUp, ...why } = takenOffForm.why;
const form = {
  why: { ...why, options: takenOffForm.why.options.filter((each) => each !== 'timeIsUp') },
} as const;

/** A strand comes off before its time is up: why? */
export function TakeOff(
  props: StepProps & {
    readonly zone: Zone;
    readonly onClose: () => void;
    /** Absent where a strand may not be put aside. */
    readonly onDiscard?: () => void;
  },
) {
  const words = useWords();
  const name = `${props.consultation.id}/takeOff/${props.zone}/${props.consultation.record.strands.length}`;
  const asked = createEventForm(props, form, name, {});
  const takeOff = async () => {
    if (await asked.send('STRAND_TAKEN_OFF', { zone: props.zone })) props.onClose();
  };
  return (
    <StepPage
      page={props.page}
      title={words.strandTest.processing.takeOffTitle}
      also={words.general.zones[props.zone]}
      actions={
        <>
          <BigButton act="cancel" onPress={props.onClose}>
            {words.general.back}
          </BigButton>
          <Show when={props.onDiscard}>
            {(discard) => (
              <BigButton act="discard-strand" onPress={discard()}>
                {words.strandTest.processing.discard}
              </BigButton>
            )}
          </Show>
          <BigButton kind="primary" act="take-off" onPress={() => void takeOff()}>
            {words.strandTest.processing.takeOff(words.general.zones[props.zone])}
          </BigButton>
        </>
      }
    >
      <PartForm step={props} form={asked} questions={form} words={words.strandTest.forms.takenOff} />
      <Refusal refusal={asked.refusal()} />
    </StepPage>
  );
}
