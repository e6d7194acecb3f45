import { For, Show } from 'solid-js';
import { useWords } from '../../parts/useWords';
import type { PreparingView } from './viewPreparing';

/** What speaks against this hair, and how carefully that asks to be tested. */
export function HowCareful(props: { readonly view: Pick<PreparingView, 'flags' | 'kind' | 'risk'> }) {
  const words = useWords();
  return (
    <div class="how-careful" data-risk={props.view.risk}>
      <p data-kind={props.view.kind}>{words.strandTest.kinds[props.view.kind]}</p>
      <p>{words.strandTest.care[props.view.risk]}</p>
      <Show when={props.view.flags.length > 0}>
        <ul class="reached">
          <For each={props.view.flags}>
            {(flag) => <li data-flag={flag}>{words.strandTest.flags[flag]}</li>}
          </For>
        </ul>
      </Show>
      <p class="soft">{words.strandTest.preparing.estimate}</p>
    </div>
  );
}
