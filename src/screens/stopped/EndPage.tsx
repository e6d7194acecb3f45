import { For, Show } from 'solid-js';
import { endedForm } from '../../../shared/records/forms/course';
import { isAnythingOnHead } from '../../../shared/records/record';
import { BigButton } from '../../parts/BigButton';
import { HoldButton } from '../../parts/HoldButton';
import { Refusal } from '../../parts/Refusal';
import { StepPage } from '../../parts/StepPage';
import { useWords } from '../../parts/useWords';
import type { LeavingKind } from '../../words/en/leaving';
import { createEventForm } from '../eventForm';
import type { StepProps } from '../stepProps';
import { Tile, Tiles } from '../Tiles';

const kinds = ['CALLED_OFF', 'CLIENT_SAID_NO', 'WE_SAID_NO'] as const satisfies readonly LeavingKind[];

/** Ending without colour: why, as a tile, and then held, since it closes the record. */
export function EndPage(props: StepProps & { readonly onClose: () => void }) {
  const words = useWords();
  const asked = createEventForm(props, endedForm, `${props.consultation.id}/ended`, {});
  const isOn = () => isAnythingOnHead(props.consultation.record);
  return (
    <StepPage
      page={props.page}
      title={words.leaving.end}
      actions={
        <>
          <BigButton act="cancel" isWay onPress={props.onClose}>
            {words.general.back}
          </BigButton>
          <For each={kinds}>
            {(kind) => (
              <HoldButton
                label={words.leaving.kinds[kind]}
                act={kind}
                kind="plain"
                isDisabled={isOn() || asked.draft.raw().reason === undefined}
                onHeld={() => void asked.send(kind)}
              />
            )}
          </For>
        </>
      }
    >
      <Show when={!isOn()} fallback={<p class="lead">{words.leaving.rinseFirst}</p>}>
        <p class="lead">{words.leaving.endedForm.reason.ask}</p>
        <Tiles question="reason" label={words.leaving.endedForm.reason.ask} size="wide">
          <For each={endedForm.reason.options}>
            {(option) => (
              <Tile
                option={option}
                isPressed={asked.draft.raw().reason === option}
                onPress={() => asked.draft.set('reason', option)}
              >
                {words.leaving.endedForm.reason.options[option]}
              </Tile>
            )}
          </For>
        </Tiles>
      </Show>
      <Refusal refusal={asked.refusal()} />
    </StepPage>
  );
}
