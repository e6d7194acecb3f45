import { createMemo, type JSX, Show } from 'solid-js';
import type { Clock } from '../../shared/records/clock';
import type { UnitSettings } from '../../shared/units/quantity';
import './clock.css';
import { sayClock } from './clockSaid';
import { useWords } from './useWords';

/** One clock, to be read from across the room: STRAND or HEAD first, then what is due, in digits, words and colour. */
export function ClockFace(props: {
  readonly clock: Clock;
  /** The strand's number, where it is a strand. */
  readonly strandNumber: number | null;
  readonly nowMs: number;
  readonly units: UnitSettings;
  readonly size?: 'big' | 'small';
  readonly children?: JSX.Element;
}) {
  const words = useWords();
  const said = createMemo(() => sayClock(props.clock, props.strandNumber, props.nowMs, words, props.units));
  return (
    <section
      class="clock-face"
      data-size={props.size ?? 'big'}
      data-clock={props.clock.id}
      data-tone={said().tone}
      data-due-at={props.clock.dueAtMs}
    >
      <div class="clock-main">
        <p class="clock-name">
          <strong>{said().name}</strong> {said().says}
        </p>
        <div class="clock-digits">{said().digits}</div>
        <Show when={props.size !== 'small'}>
          <p class="clock-look">
            <Show when={said().look}>{(look) => <span class="clock-look-now">{look()}</span>}</Show>
            <span>{said().dueAt}</span>
          </p>
        </Show>
      </div>
      {props.children}
    </section>
  );
}
