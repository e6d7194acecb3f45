import { createMemo, Show } from 'solid-js';
import { findCallKind } from '../../../shared/records/call';
import type { UnitSettings } from '../../../shared/units/quantity';
import { useWords } from '../../parts/useWords';
import { CallShape } from '../alarm/CallShape';
import { sayBarDue } from './sayBarDue';
import { sayWhose } from './sayWhose';
import type { BarDue } from './viewBar';

/** What is due next over all clients, to be read from three metres; a tap goes there. */
export function Strip(props: {
  readonly due: BarDue;
  /** Instead of chair and ticket, where no ticket is shown. */
  readonly whose?: string;
  readonly nowMs: number;
  readonly units: UnitSettings;
  readonly onOpen: (id: string) => void;
}) {
  const words = useWords();
  const said = createMemo(() => sayBarDue(props.due, props.nowMs, words, props.units));
  /** As which of the three this calls, silenced or not; null while it does not. */
  const kind = createMemo(() => {
    const { due } = props;
    if (due.what === 'reaction' || due.waiting === null || due.clock.kind === 'dry') return null;
    return findCallKind(due.waiting);
  });
  return (
    <button
      type="button"
      class="strip"
      data-act="strip"
      data-tone={said().tone}
      data-call={kind() ?? undefined}
      data-wide={said().digits.length > 6 ? '' : undefined}
      onClick={() => props.onOpen(props.due.consultation.id)}
    >
      <span class="strip-words">
        <span class="strip-whose">
          <Show when={kind()} fallback={words.bar.next}>
            {(calls) => (
              <>
                <CallShape kind={calls()} />
                <strong>{words.alarm.calls[calls()]}</strong>
              </>
            )}
          </Show>
          {' · '}
          {props.whose ?? sayWhose(props.due.consultation, words, props.units)}
        </span>
        <span class="strip-what">
          <span>{said().name}</span>
          <span class="strip-dot">·</span>
          <span>{said().says}</span>
        </span>
      </span>
      <span class="strip-digits">{said().digits}</span>
    </button>
  );
}
