import { createMemo, Index, Show } from 'solid-js';
import type { Zone } from '../../../shared/records/zones';
import { sayClock } from '../../parts/clockSaid';
import { useWords } from '../../parts/useWords';
import '../clocks/clocks.css';
import type { StepProps } from '../stepProps';
import { viewProcessing } from './viewProcessing';

/** The other strands that run, in one line, while one of them is looked at or another is begun. */
export function RunningLine(
  props: Pick<StepProps, 'consultation' | 'settings' | 'nowMs'> & { readonly not: Zone },
) {
  const words = useWords();
  const others = createMemo(() =>
    viewProcessing(props.consultation, props.nowMs)
      .running.filter(({ zone }) => zone !== props.not)
      .map(({ clock, strand }) => sayClock(clock, strand.number, props.nowMs, words, props.settings.units)),
  );
  return (
    <Show when={others().length > 0}>
      <p class="running-line" data-line="running">
        <Index each={others()}>
          {(other) => (
            <span data-tone={other().tone}>
              <strong>{other().name}</strong> {other().says} <strong>{other().digits}</strong>
            </span>
          )}
        </Index>
      </p>
    </Show>
  );
}
