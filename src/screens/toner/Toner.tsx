import { createMemo, createSignal, For, Show } from 'solid-js';
import { issueTonerPermit } from '../../../shared/judgement/permit';
import type { Zone } from '../../../shared/records/zones';
import { BigButton } from '../../parts/BigButton';
import { useWords } from '../../parts/useWords';
import type { ZoneAtScale } from '../mix/viewMix';
import type { StepProps } from '../stepProps';
import { FeelPage } from './FeelPage';
import { TonerPage } from './TonerPage';

/** Towards a toner for one zone that was rinsed: first the hair is felt, then the bowl is weighed. */
export function Toner(props: StepProps & { readonly zone: Zone; readonly onClose: () => void }) {
  const [isFeeling, setIsFeeling] = createSignal(false);
  const isOpen = createMemo(
    () => issueTonerPermit(props.consultation.record, props.zone, props.settings, props.nowMs).ok,
  );
  return (
    <Show
      when={isOpen() && !isFeeling()}
      fallback={
        // Each pull is a page of its own: what it asks depends on what was felt before.
        <For each={[props.consultation.record.stretches.length]}>
          {() => <FeelPage {...props} onFelt={() => setIsFeeling(false)} />}
        </For>
      }
    >
      <TonerPage {...props} onFeelAgain={() => setIsFeeling(true)} />
    </Show>
  );
}

/** Felt since its rinse, and it did not spring back: no toner today. */
export const isFeltWeak = ({ toner }: ZoneAtScale): boolean =>
  toner !== null && !toner.ok && toner.error.code === 'stretchFails';

/** The way there, beside a zone that was rinsed. */
export function TonerWay(props: { readonly atScale: ZoneAtScale; readonly onToner: (zone: Zone) => void }) {
  const words = useWords();
  const name = () => words.general.zones[props.atScale.zone];
  return (
    <Show when={props.atScale.toner}>
      {(permit) => (
        <BigButton act={`toner-${props.atScale.zone}`} onPress={() => props.onToner(props.atScale.zone)}>
          {permit().ok ? words.toner.mixFor(name()) : words.toner.feelFor(name())}
        </BigButton>
      )}
    </Show>
  );
}
