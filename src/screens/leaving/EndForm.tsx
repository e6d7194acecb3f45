import { createSignal, For, Show } from 'solid-js';
import { endedForm } from '../../../shared/records/forms/course';
import { isAnythingOnHead } from '../../../shared/records/record';
import { createDraft } from '../../parts/form/draft';
import { FormFields } from '../../parts/form/FormFields';
import { HoldButton } from '../../parts/HoldButton';
import { Refusal } from '../../parts/Refusal';
import { useWords } from '../../parts/useWords';
import type { SubmitRefusal } from '../../station/makeStation';
import type { LeavingKind } from '../../words/en/leaving';
import type { StepProps } from '../stepProps';

const kinds = ['WE_SAID_NO', 'CLIENT_SAID_NO', 'CALLED_OFF'] as const satisfies readonly LeavingKind[];

/** Ending without colour: why, and then held, since it closes the record. */
export function EndForm(props: StepProps) {
  const words = useWords();
  const draft = createDraft();
  const [refusal, setRefusal] = createSignal<SubmitRefusal | null>(null);
  const fields = () => {
    const refused = refusal();
    return refused?.kind === 'fields' ? refused.fields : [];
  };
  async function end(type: LeavingKind): Promise<void> {
    const taken = await props.submit({ type, answers: draft.raw() });
    setRefusal(taken.ok ? null : taken.error);
  }
  return (
    <section class="panel" data-panel="end">
      <h3>{words.leaving.end}</h3>
      <Show when={!isAnythingOnHead(props.consultation.record)} fallback={<p>{words.leaving.rinseFirst}</p>}>
        <FormFields
          form={endedForm}
          words={words.leaving.endedForm}
          draft={draft}
          onChange={() => setRefusal(null)}
          refusals={fields()}
          units={props.settings.units}
          hasAgeLine={false}
          nowMs={props.nowMs}
        />
        <div class="options">
          <For each={kinds}>
            {(kind) => (
              <HoldButton
                label={words.leaving.holdToEnd(words.leaving.kinds[kind])}
                act={kind}
                onHeld={() => void end(kind)}
              />
            )}
          </For>
        </div>
      </Show>
      <Refusal refusal={refusal()} />
    </section>
  );
}
