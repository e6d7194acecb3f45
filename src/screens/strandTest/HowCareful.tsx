import { For, Show } from 'solid-js';
import type { Settings } from '../../../shared/records/settings';
import { useWords } from '../../parts/useWords';
import { ChanceLine } from './ChanceLine';
import type { PreparingView } from './viewPreparing';

/** What speaks against this hair, and how carefully that asks to be tested. */
export function HowCareful(props: {
  readonly view: Pick<PreparingView, 'chance' | 'flags' | 'kind' | 'risk'>;
  readonly settings: Settings;
}) {
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
      <ChanceLine chance={props.view.chance} settings={props.settings} />
    </div>
  );
}
