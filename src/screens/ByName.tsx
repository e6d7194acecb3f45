import { type JSX, Show } from 'solid-js';
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
    /** A stop is lifted: then waiting is what comes first, signing is quiet, and whose name it is stands nowhere yet. */
    readonly isLifting?: boolean;
    readonly onClose: () => void;
    /** What is said above the questions. */
    readonly children?: JSX.Element;
  },
) {
  const form: Form = { by, ...props.questions };
  const asked = createEventForm(
    props,
    form,
    `${props.consultation.id}/${props.draft}`,
    props.isLifting === true ? {} : { by: props.by },
  );
  const words = useWords();
  const send = async () => {
    const name = asked.draft.raw().by;
    const isTaken = await asked.send(props.type, props.given, typeof name === 'string' ? name.trim() : '');
    if (isTaken) props.onClose();
  };
  const signKind = () => {
    if (props.isLifting === true) return 'quiet';
    return asked.isComplete() ? 'primary' : 'plain';
  };
  const waiting = () => (
    <BigButton kind={props.isLifting === true ? 'primary' : 'plain'} act="cancel" onPress={props.onClose}>
      {props.back}
    </BigButton>
  );
  return (
    <StepPage
      page={props.page}
      title={props.title}
      {...(props.also === undefined ? {} : { also: props.also })}
      actions={
        <>
          <Show when={props.isLifting !== true}>{waiting()}</Show>
          <BigButton kind={signKind()} act={props.act} onPress={() => void send()}>
            {props.doIt}
          </BigButton>
          <Show when={props.isLifting === true}>{waiting()}</Show>
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
