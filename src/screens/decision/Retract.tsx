import { BY_MAX_LENGTH } from '../../../shared/records/event';
import type { Form } from '../../../shared/records/form';
import { retractedForm } from '../../../shared/records/forms/course';
import type { Zone } from '../../../shared/records/zones';
import { BigButton } from '../../parts/BigButton';
import { Refusal } from '../../parts/Refusal';
import { StepPage } from '../../parts/StepPage';
import { useWords } from '../../parts/useWords';
import { createEventForm } from '../eventForm';
import { PartForm } from '../PartForm';
import type { StepProps } from '../stepProps';

const form = {
  by: { kind: 'text', maxLength: BY_MAX_LENGTH },
  code: retractedForm.code,
  words: retractedForm.words,
} as const satisfies Form;

/** A wrong outcome is taken back by name; it stays in the log. */
export function Retract(props: StepProps & { readonly zone: Zone; readonly onClose: () => void }) {
  const words = useWords();
  const said = () => words.decision;
  const asked = createEventForm(props, form, `${props.consultation.id}/retract/${props.zone}`, {
    by: props.by,
  });
  const takeBack = async () => {
    const { by } = asked.draft.raw();
    const isTaken = await asked.send(
      'OUTCOME_RETRACTED',
      { zone: props.zone },
      typeof by === 'string' ? by.trim() : '',
    );
    if (isTaken) props.onClose();
  };
  return (
    <StepPage
      page={props.page}
      title={said().retractTitle(words.general.zones[props.zone])}
      actions={
        <>
          <BigButton act="cancel" onPress={props.onClose}>
            {words.general.cancel}
          </BigButton>
          <BigButton kind="primary" act="retract" onPress={() => void takeBack()}>
            {said().retractDo}
          </BigButton>
        </>
      }
    >
      <PartForm
        step={props}
        form={asked}
        questions={form}
        words={said().retracted}
        picks={{ by: props.settings.staff }}
      />
      <Refusal refusal={asked.refusal()} />
    </StepPage>
  );
}
