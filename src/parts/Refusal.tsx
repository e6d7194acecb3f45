import { Show } from 'solid-js';
import { type AnyRefusal, sayRefusal } from '../words/sayRefusal';
import './said.css';
import { useWords } from './useWords';

/** What the station did not take: what, and what clears it. Read out as soon as it appears. */
export function Refusal(props: { readonly refusal: AnyRefusal | null | undefined }) {
  const words = useWords();
  return (
    <div class="refusal-place" role="alert">
      <Show when={props.refusal}>
        {(refusal) => (
          <p class="refusal" data-refusal={refusal().kind}>
            <strong>{sayRefusal(refusal(), words).what}</strong>{' '}
            <span>{sayRefusal(refusal(), words).clears}</span>
          </p>
        )}
      </Show>
    </div>
  );
}
