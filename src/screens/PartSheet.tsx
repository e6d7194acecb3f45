import type { JSX } from 'solid-js';
import type { Form } from '../../shared/records/form';
import type { FieldRefusal } from '../../shared/records/readForm';
import type { Picks, Waiting } from '../parts/form/field';
import { Sheet } from '../parts/form/Sheet';
import type { AnyFormWords } from '../words/formWords';
import type { EventForm } from './eventForm';
import type { StepProps } from './stepProps';

/** The questions of an event's form, one at a time, and what they come to. */
export function PartSheet(props: {
  readonly step: Pick<StepProps, 'settings' | 'nowMs'>;
  readonly form: EventForm;
  readonly questions: Form;
  readonly words: AnyFormWords;
  readonly picks?: Picks;
  readonly waiting?: Waiting;
  /** What else is wrong at a field, beside what the form itself says. */
  readonly also?: readonly FieldRefusal[];
  /** A way beside a question, in its corner. */
  readonly corner?: (path: string) => JSX.Element;
  /** The name of what the answers come to. */
  readonly summary: string;
  readonly children: JSX.Element;
}) {
  return (
    <Sheet
      form={props.questions}
      words={props.words}
      draft={props.form.draft}
      onChange={props.form.onChange}
      refusals={[...props.form.refusals(), ...(props.also ?? [])]}
      units={props.step.settings.units}
      hasAgeLine={false}
      nowMs={props.step.nowMs}
      picks={props.picks ?? {}}
      waiting={props.waiting ?? {}}
      summary={props.summary}
      corner={(path) => props.corner?.(path)}
    >
      {props.children}
    </Sheet>
  );
}
