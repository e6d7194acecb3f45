import { Show } from 'solid-js';
import { FoundMark } from '../decision/FoundMark';
import './heed.css';

/** Something to heed about what was just said or done, with its mark; nothing where there is nothing to say. */
export function Heed(props: { readonly line: string; readonly says: string }) {
  return (
    <Show when={props.says !== ''}>
      <p class="heed-line" data-line={props.line} role="status">
        <FoundMark shape="heed" />
        <span>{props.says}</span>
      </p>
    </Show>
  );
}
