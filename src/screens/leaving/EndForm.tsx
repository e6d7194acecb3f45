import { For, Show } from 'solid-js';
import { endedForm } from '../../../shared/records/forms/course';
import { isAnythingOnHead } from '../../../shared/records/record';
import { HoldButton } from '../../parts/HoldButton';
import { Refusal } from '../../parts/Refusal';
import { useWords } from '../../parts/useWords';
import type { LeavingKind } from '../../words/en/leaving';
import { createEventForm } from '../eventForm';
import { PartForm } from '../PartForm';
import type { StepProps } from '../stepProps';

const kinds = ['WE_SAID_NO', 'CLIENT_SAID_NO', 'CALLED_OFF'] as const satisfies readonly LeavingKind[];

/** Ending without colour: why, and then held, since it closes the record. */
export function EndForm(props: StepProps) {
  const words = useWords();
  const asked = createEventForm(props, endedForm, `${props.consultation.id}/ended`, {});
  return (
    <section class="panel leaving-part" data-panel="end">
      <h3>{words.leaving.end}</h3>
      <Show when={!isAnythingOnHead(props.consultation.record)} fallback={<p>{words.leaving.rinseFirst}</p>}>
        <PartForm step={props} form={asked} questions={endedForm} words={words.leaving.endedForm} />
        <div class="options">
          <For each={kinds}>
            {(kind) => (
              <HoldButton
                label={words.leaving.holdToEnd(words.leaving.kinds[kind])}
                act={kind}
                onHeld={() => void asked.send(kind)}
              />
            )}
          </For>
        </div>
      </Show>
      <Refusal refusal={asked.refusal()} />
    </section>
  );
}
