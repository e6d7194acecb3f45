import { Show } from 'solid-js';
import { useWords } from '../../parts/useWords';
import './alarm.css';
import type { Alarm } from './createAlarm';

/** Quiet, with one tap, while this tablet calls; what is due stays due. */
export function Silence(props: { readonly alarm: Alarm }) {
  const words = useWords();
  return (
    <Show when={props.alarm.isCalling()}>
      <button type="button" class="silence" data-act="silence" onClick={() => props.alarm.silence()}>
        <svg viewBox="0 0 32 32" aria-hidden="true">
          <path d="M4 12 h6 l8 -7 v22 l-8 -7 h-6 z" />
          <path class="silence-waves" d="M22 12 l7 8 M29 12 l-7 8" />
        </svg>
        {words.alarm.silence}
      </button>
    </Show>
  );
}
