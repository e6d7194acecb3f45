import { Show } from 'solid-js';
import type { UnitSettings } from '../../../shared/units/quantity';
import { useWords } from '../../parts/useWords';
import { Flags } from './Flags';
import type { PreparingView } from './viewPreparing';

/** How carefully this hair asks to be tested, and what speaks against it. */
export function HowCareful(props: {
  readonly view: Pick<PreparingView, 'flags' | 'risk'>;
  readonly units: UnitSettings;
}) {
  const words = useWords();
  return (
    <div class="how-careful" data-risk={props.view.risk}>
      <p>{words.strandTest.care[props.view.risk]}</p>
      <Show when={props.view.flags.length > 0}>
        <Flags lead={words.decision.suspect} flags={props.view.flags} units={props.units} />
      </Show>
    </div>
  );
}
