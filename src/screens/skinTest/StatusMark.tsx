import { Match, Switch } from 'solid-js';
import type { AnyStatus } from './skinTestView';

/** The shape beside the word of a status: an eye to read, a clock that waits, a cross, a tick, an empty ring. */
export function StatusMark(props: { readonly status: AnyStatus }) {
  return (
    <svg class="status-mark" viewBox="0 0 32 32" aria-hidden="true">
      <Switch fallback={<circle cx="16" cy="16" r="11" stroke-dasharray="5 5" />}>
        <Match when={props.status === 'due'}>
          <path d="M2 16 C8 6 24 6 30 16 C24 26 8 26 2 16 Z" />
          <circle class="status-mark-filled" cx="16" cy="16" r="4" />
        </Match>
        <Match when={props.status === 'waiting'}>
          <circle cx="16" cy="16" r="12" />
          <path d="M16 9 V16 L21 19" />
        </Match>
        <Match when={props.status === 'reaction'}>
          <path d="M7 7 L25 25 M25 7 L7 25" />
        </Match>
        <Match when={props.status === 'clear'}>
          <path d="M5 17 L13 25 L28 8" />
        </Match>
      </Switch>
    </svg>
  );
}
