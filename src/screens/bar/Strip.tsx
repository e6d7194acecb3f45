import { createMemo, Show } from 'solid-js';
import type { UnitSettings } from '../../../shared/units/quantity';
import { sayNextDue } from '../../parts/clockSaid';
import { useWords } from '../../parts/useWords';
import { sayWhose } from './sayWhose';
import type { RunningClock } from './viewBar';

/** What is due next over all clients, to be read from three metres; a tap goes there. */
export function Strip(props: {
  readonly running: RunningClock | undefined;
  readonly nowMs: number;
  readonly units: UnitSettings;
  readonly onOpen: (id: string) => void;
}) {
  const words = useWords();
  const said = createMemo(() => {
    const { running, nowMs, units } = props;
    return running === undefined
      ? null
      : sayNextDue(running.clock, running.strandNumber, nowMs, words, units);
  });
  return (
    <Show when={said()} fallback={<p class="strip strip-quiet">{words.bar.nothingRuns}</p>}>
      {(due) => (
        <button
          type="button"
          class="strip"
          data-act="strip"
          data-tone={due().tone}
          onClick={() => props.running && props.onOpen(props.running.consultation.id)}
        >
          <span class="strip-words">
            <span class="strip-whose">
              {words.bar.next}
              {' · '}
              {sayWhose(props.running?.consultation, words, props.units)}
            </span>
            <span class="strip-what">
              <span>{due().name}</span>
              <span class="strip-dot">·</span>
              <span>{due().says}</span>
            </span>
          </span>
          <span class="strip-digits">{due().digits}</span>
        </button>
      )}
    </Show>
  );
}
