import { For } from 'solid-js';
import type { TextQuestion } from '../../../shared/records/form';
import type { FieldProps } from './field';
import { TextBox } from './TextBox';

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
      <TextBox
        ask={props.words.ask}
        path={props.path}
        value={typed()}
        isRefused={props.refusals.some(({ path }) => path === props.path)}
        onChange={props.onChange}
      />
    </div>
  );
}
