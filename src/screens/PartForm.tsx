import type { Form } from '../../shared/records/form';
import { FormFields } from '../parts/form/FormFields';
import type { Picks } from '../parts/form/field';
import type { AnyFormWords } from '../words/formWords';
import type { EventForm } from './eventForm';
import type { StepProps } from './stepProps';

/** Some of the questions of an event's form, so that one form may stand in two columns. */
export function PartForm(props: {
  readonly step: Pick<StepProps, 'settings' | 'nowMs'>;
  readonly form: EventForm;
  readonly questions: Form;
  readonly words: AnyFormWords;
  readonly picks?: Picks;
}) {
  return (
    <FormFields
      form={props.questions}
      words={props.words}
      draft={props.form.draft}
      onChange={props.form.onChange}
      refusals={props.form.refusals()}
      units={props.step.settings.units}
      hasAgeLine={false}
      nowMs={props.step.nowMs}
      {...(props.picks === undefined ? {} : { picks: props.picks })}
    />
  );
}
