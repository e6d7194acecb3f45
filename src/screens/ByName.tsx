import type { JSX } from 'solid-js';
import type { RawEvent } from '../../shared/records/classify';
import { BY_MAX_LENGTH } from '../../shared/records/event';
import type { Form } from '../../shared/records/form';
import type { RawForm } from '../../shared/records/readForm';
import { BigButton } from '../parts/BigButton';
import { StepPage } from '../parts/StepPage';
import { useWords } from '../parts/useWords';
import type { AnyFormWords } from '../words/formWords';
import { createEventForm } from './eventForm';
import { PartSheet } from './PartSheet';
import { SentRefusal } from './SentRefusal';
import type { StepProps } from './stepProps';

const by = { kind: 'text', maxLength: BY_MAX_LENGTH } as const;

/** What a named person takes on: whose name, and the questions of that event. It is written in that name. */
export function ByName(
  props: StepProps & {
    readonly title: string;
    readonly also?: string;
    /** Keeps its draft apart from every other of this client. */
    readonly draft: string;
    readonly type: Exclude<RawEvent['type'], 'ANSWERED'>;
    /** What of the event is not asked. */
    readonly given: RawForm;
    readonly questions: Form;
    readonly words: AnyFormWords;
    readonly act: string;
    readonly doIt: string;
    readonly back: string;
    readonly onClose: () => void;
    /** What is said above the questions. */
    readonly children?: JSX.Element;
  },
) {
  const form: Form = { by, ...props.questions };
  const asked = createEventForm(props, form, `${props.consultation.id}/${props.draft}`, { by: props.by });
  const words = useWords();
  const send = async () => {
    const name = asked.draft.raw().by;
    const isTaken = await asked.send(props.type, props.given, typeof name === 'string' ? name.trim() : '');
    if (isTaken) props.onClose();
  };
  return (
    <StepPage
      page={props.page}
      title={props.title}
      {...(props.also === undefined ? {} : { also: props.also })}
      actions={
        <>
          <BigButton act="cancel" onPress={props.onClose}>
            {props.back}
          </BigButton>
          <BigButton kind="primary" act={props.act} onPress={() => void send()}>
            {props.doIt}
          </BigButton>
        </>
      }
    >
      <PartSheet
        step={props}
        form={asked}
        questions={form}
        words={props.words}
        picks={{ by: props.settings.staff }}
        summary={words.general.signed}
      >
        <p class="big-word">{props.doIt}</p>
        <p class="lead">{words.general.signedHint}</p>
      </PartSheet>
      {props.children}
      <SentRefusal refusal={asked.refusal()} />
    </StepPage>
  );
}
