import { For } from 'solid-js';
import type { TextQuestion } from '../../../shared/records/form';
import { nameRefusalId } from './Field';
import type { FieldProps } from './field';

/** A short text, or one of the names the salon keeps. */
export function TextField(props: FieldProps<TextQuestion>) {
  const typed = () => (typeof props.value === 'string' ? props.value : (props.question.or ?? ''));
  return (
    <div class="options">
      <For each={props.picks?.[props.name] ?? []}>
        {(pick) => (
          <button
            type="button"
            class="option"
            data-option={pick}
            aria-pressed={typed() === pick}
            onClick={() => props.onChange(pick)}
          >
            {pick}
          </button>
        )}
      </For>
      <input
        type="text"
        class="text-box"
        autocomplete="off"
        aria-label={props.words.ask}
        aria-describedby={nameRefusalId(props.path)}
        aria-invalid={props.refusals.some(({ path }) => path === props.path)}
        value={typed()}
        onInput={(event) => props.onChange(event.currentTarget.value)}
      />
    </div>
  );
}
