import { Show } from 'solid-js';
import { correctedForm } from '../../../shared/records/forms/course';
import type { Correctable } from '../../../shared/records/steps';
import { HoldButton } from '../../parts/HoldButton';
import { Refusal } from '../../parts/Refusal';
import { useWords } from '../../parts/useWords';
import { createEventForm } from '../eventForm';
import { PartForm } from '../PartForm';
import type { StepProps } from '../stepProps';

const { code, words: ownWords } = correctedForm;

/** A wrong answer taken back: by whom, why, and in words; held, since it opens what was stopped. */
export function Correction(
  props: StepProps & { readonly answers: readonly Correctable[]; readonly title?: string },
) {
  const words = useWords();
  const asked = createEventForm(props, { code, words: ownWords }, `${props.consultation.id}/corrected`, {});
  const which = createEventForm(
    props,
    { answer: correctedForm.answer },
    `${props.consultation.id}/correctedAnswer`,
    {},
  );
  /** Where only one answer can be meant, it is not asked. */
  const onlyOne = () => (props.answers.length === 1 ? props.answers[0] : undefined);
  const question = () => ({ answer: { kind: 'choice', options: props.answers } }) as const;
  const correct = async () => {
    const answer = onlyOne() ?? which.draft.raw().answer;
    if (await asked.send('CORRECTED', { answer })) which.draft.begin({});
  };
  return (
    <section class="panel" data-panel="correction">
      <h2>{props.title ?? words.leaving.correct}</h2>
      <p>{words.leaving.correctLead(props.by)}</p>
      <Show when={onlyOne()}>
        {(answer) => <p>{words.leaving.correctsOnly(words.leaving.correctables[answer()])}</p>}
      </Show>
      <Show when={onlyOne() === undefined}>
        <PartForm step={props} form={which} questions={question()} words={words.leaving.correctedForm} />
      </Show>
      <PartForm
        step={props}
        form={asked}
        questions={{ code, words: ownWords }}
        words={words.leaving.correctedForm}
      />
      <div class="options">
        <HoldButton label={words.leaving.holdToCorrect} act="correct" onHeld={() => void correct()} />
      </div>
      <Refusal refusal={asked.refusal()} />
    </section>
  );
}
