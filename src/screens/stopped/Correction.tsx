import { createMemo, createSignal } from 'solid-js';
import type { Form } from '../../../shared/records/form';
import { correctedForm } from '../../../shared/records/forms/course';
import type { Correctable } from '../../../shared/records/steps';
import { createDraft } from '../../parts/form/draft';
import { FormFields } from '../../parts/form/FormFields';
import { HoldButton } from '../../parts/HoldButton';
import { Refusal } from '../../parts/Refusal';
import { useWords } from '../../parts/useWords';
import type { SubmitRefusal } from '../../station/makeStation';
import type { StepProps } from '../stepProps';

/** A wrong answer taken back: by whom, why, and in words; held, since it opens what was stopped. */
export function Correction(props: StepProps & { readonly answers: readonly Correctable[] }) {
  const words = useWords();
  const draft = createDraft();
  const [refusal, setRefusal] = createSignal<SubmitRefusal | null>(null);
  const form = createMemo<Form>(() => ({
    ...correctedForm,
    answer: { kind: 'choice', options: props.answers, ...onlyOne(props.answers) },
  }));
  const fields = () => {
    const refused = refusal();
    return refused?.kind === 'fields' ? refused.fields : [];
  };
  async function correct(): Promise<void> {
    const answers = { ...onlyOneAnswer(props.answers), ...draft.raw() };
    const taken = await props.submit({ type: 'CORRECTED', answers });
    setRefusal(taken.ok ? null : taken.error);
    if (taken.ok) draft.begin({});
  }
  return (
    <section class="panel" data-panel="correction">
      <h2>{words.leaving.correct}</h2>
      <p>{words.leaving.correctLead(props.by)}</p>
      <FormFields
        form={form()}
        words={words.leaving.correctedForm}
        draft={draft}
        onChange={() => setRefusal(null)}
        refusals={fields()}
        units={props.settings.units}
        hasAgeLine={false}
        nowMs={props.nowMs}
      />
      <HoldButton label={words.leaving.holdToCorrect} act="correct" onHeld={() => void correct()} />
      <Refusal refusal={refusal()} />
    </section>
  );
}

/** Where only one answer can be meant, it is chosen already. */
const onlyOne = ([answer, ...others]: readonly Correctable[]) =>
  answer === undefined || others.length > 0 ? {} : { or: answer };

const onlyOneAnswer = (answers: readonly Correctable[]) => {
  const { or } = onlyOne(answers) as { readonly or?: Correctable };
  return or === undefined ? {} : { answer: or };
};
