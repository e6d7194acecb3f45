import type { RuleId } from '../../../shared/judgement/rules';
import { BY_MAX_LENGTH } from '../../../shared/records/event';
import type { Form } from '../../../shared/records/form';
import { overriddenForm } from '../../../shared/records/forms/course';
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
  code: overriddenForm.code,
  words: overriddenForm.words,
} as const satisfies Form;

/** A judgement stop is lifted: by whom, for which of a few reasons, and in her own words. */
export function Override(
  props: StepProps & { readonly rule: RuleId; readonly title: string; readonly onClose: () => void },
) {
  const words = useWords();
  const name = () => `${props.consultation.id}/override/${props.rule}`;
  const asked = createEventForm(props, form, name(), { by: props.by });
  const lift = async () => {
    const by = asked.draft.raw().by;
    const isTaken = await asked.send(
      'OVERRIDDEN',
      { rule: props.rule },
      typeof by === 'string' ? by.trim() : '',
    );
    if (isTaken) props.onClose();
  };
  return (
    <StepPage
      page={props.page}
      title={props.title}
      actions={
        <>
          <BigButton act="cancel" onPress={props.onClose}>
            {words.general.cancel}
          </BigButton>
          <BigButton kind="primary" act="override" onPress={() => void lift()}>
            {words.strandTest.preparing.judge}
          </BigButton>
        </>
      }
    >
      <Caution>
        <p>
          <strong>{words.rules[props.rule].what}</strong> {words.rules[props.rule].why}
        </p>
      </Caution>
      <PartForm
        step={props}
        form={asked}
        questions={form}
        words={words.strandTest.forms.override}
        picks={{ by: props.settings.staff }}
      />
      <Refusal refusal={asked.refusal()} />
    </StepPage>
  );
}
