import { Show } from 'solid-js';
import type { Form } from '../../../shared/records/form';
import { correctedForm } from '../../../shared/records/forms/course';
import type { Correctable } from '../../../shared/records/steps';
import { HoldButton } from '../../parts/HoldButton';
import { Refusal } from '../../parts/Refusal';
import { useWords } from '../../parts/useWords';
import { createEventForm } from '../eventForm';
import { PartForm } from '../PartForm';
import type { StepProps } from '../stepProps';
import { BeforeCorrection } from './BeforeCorrection';

interface CorrectionProps extends StepProps {
  readonly answers: readonly Correctable[];
  readonly title?: string;
}

const { code, words: ownWords } = correctedForm;

/** Where only one answer can be meant, it is not asked. */
const findForm = (answers: readonly Correctable[]): Form =>
  answers.length === 1
    ? { code, words: ownWords }
    : { answer: { kind: 'choice', options: answers }, code, words: ownWords };

/** A wrong answer taken back: by whom, why, and in words; held, since it opens what was stopped. */
export function Correction(props: CorrectionProps) {
  return (
    <Show when={props.answers.join(' ')} keyed>
      {(_answers) => <OneCorrection {...props} />}
    </Show>
  );
}

function OneCorrection(props: CorrectionProps) {
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
    <section class="panel" data-panel="correction">
      <h2>{props.title ?? words.leaving.correct}</h2>
      <p>{words.leaving.correctLead(props.by)}</p>
      <Show when={only}>
        {(answer) => <p>{words.leaving.correctsOnly(words.leaving.correctables[answer()])}</p>}
      </Show>
      <PartForm step={props} form={asked} questions={form} words={words.leaving.correctedForm} />
      <Show when={chosen()} keyed>
        {(answer) => <BeforeCorrection {...props} answer={answer} />}
      </Show>
      <div class="options">
        <HoldButton label={words.leaving.holdToCorrect} act="correct" onHeld={() => void correct()} />
      </div>
      <Refusal refusal={asked.refusal()} />
    </section>
  );
}
