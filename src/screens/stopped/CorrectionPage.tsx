import { Show } from 'solid-js';
import type { Form } from '../../../shared/records/form';
import { correctedForm } from '../../../shared/records/forms/course';
import type { Correctable } from '../../../shared/records/steps';
import { BigButton } from '../../parts/BigButton';
import { HoldButton } from '../../parts/HoldButton';
import { StepPage } from '../../parts/StepPage';
import { useWords } from '../../parts/useWords';
import { createEventForm } from '../eventForm';
import { PartSheet } from '../PartSheet';
import { SentRefusal } from '../SentRefusal';
import type { StepProps } from '../stepProps';
import { BeforeCorrection } from './BeforeCorrection';

const { code, words: ownWords } = correctedForm;

/** Where only one answer can be meant, it is not asked. */
const findForm = (answers: readonly Correctable[]): Form =>
  answers.length === 1
    ? { code, words: ownWords }
    : { answer: { kind: 'choice', options: answers }, code, words: ownWords };

/** A wrong answer taken back: why, in whose words, and what that voids; held, since it opens what was stopped. */
export function CorrectionPage(
  props: StepProps & { readonly answers: readonly Correctable[]; readonly onClose: () => void },
) {
  return (
    <Show when={props.answers.join(' ')} keyed>
      {(_answers) => <OneCorrection {...props} />}
    </Show>
  );
}

function OneCorrection(
  props: StepProps & { readonly answers: readonly Correctable[]; readonly onClose: () => void },
) {
  const words = useWords();
  const form = findForm(props.answers);
  const only = props.answers.length === 1 ? props.answers[0] : undefined;
  const name = `${props.consultation.id}/corrected/${props.answers.join('+')}`;
  const asked = createEventForm(props, form, name, {});
  const chosen = () => {
    const answer = only ?? asked.draft.raw().answer;
    return props.answers.find((each) => each === answer);
  };
  const correct = () => asked.send('CORRECTED', only === undefined ? {} : { answer: only });
  return (
    <StepPage
      page={props.page}
      title={words.leaving.correct}
      {...(only === undefined ? {} : { also: words.leaving.correctables[only] })}
      actions={
        <>
          <p class="soft">{words.leaving.correctLead(props.by)}</p>
          <BigButton act="cancel" isWay onPress={props.onClose}>
            {words.general.back}
          </BigButton>
          <HoldButton label={words.leaving.holdToCorrect} act="correct" onHeld={() => void correct()} />
        </>
      }
    >
      <PartSheet
        step={props}
        form={asked}
        questions={form}
        words={words.leaving.correctedForm}
        summary={words.general.signed}
      >
        <p class="big-word">{words.leaving.holdToCorrect}</p>
      </PartSheet>
      <Show when={chosen()} keyed>
        {(answer) => <BeforeCorrection {...props} answer={answer} />}
      </Show>
      <SentRefusal refusal={asked.refusal()} />
    </StepPage>
  );
}
