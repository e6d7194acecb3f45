import { BY_MAX_LENGTH } from '../../../shared/records/event';
import type { Form } from '../../../shared/records/form';
import { discardedForm } from '../../../shared/records/forms/test';
import type { Zone } from '../../../shared/records/zones';
import { BigButton } from '../../parts/BigButton';
import { Caution } from '../../parts/Caution';
import { Refusal } from '../../parts/Refusal';
import { StepPage } from '../../parts/StepPage';
import { useWords } from '../../parts/useWords';
import { createEventForm } from '../eventForm';
import { PartForm } from '../PartForm';
import type { StepProps } from '../stepProps';

const form = {
  by: { kind: 'text', maxLength: BY_MAX_LENGTH },
  why: discardedForm.why,
} as const satisfies Form;

/** A strand that proves nothing is put aside by name; a new one has to be tested. */
export function Discard(props: StepProps & { readonly zone: Zone; readonly onClose: () => void }) {
  const words = useWords();
  const said = () => words.strandTest.processing;
  const name = `${props.consultation.id}/discard/${props.zone}/${props.consultation.record.strands.length}`;
  const asked = createEventForm(props, form, name, { by: props.by });
  const putAside = async () => {
    const { by } = asked.draft.raw();
    const isTaken = await asked.send(
      'STRAND_DISCARDED',
      { zone: props.zone },
      typeof by === 'string' ? by.trim() : '',
    );
    if (isTaken) props.onClose();
  };
  return (
    <StepPage
      page={props.page}
      title={said().discardTitle}
      also={words.general.zones[props.zone]}
      actions={
        <>
          <BigButton act="cancel" onPress={props.onClose}>
            {words.general.back}
          </BigButton>
          <BigButton kind="primary" act="discard" onPress={() => void putAside()}>
            {said().discardDo}
          </BigButton>
        </>
      }
    >
      <Caution>
        <p>{said().discardHint}</p>
      </Caution>
      <PartForm
        step={props}
        form={asked}
        questions={form}
        words={words.strandTest.forms.discarded}
        picks={{ by: props.settings.staff }}
      />
      <Refusal refusal={asked.refusal()} />
    </StepPage>
  );
}
