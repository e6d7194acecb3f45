import { For } from 'solid-js';

/** One of a few, side by side: a tap shows what it does at once. */
export function OneOf<Value>(props: {
  readonly question: string;
  readonly ask: string;
  readonly options: readonly { readonly value: Value; readonly name: string; readonly also?: string }[];
  readonly chosen: Value;
  readonly onChoose: (value: Value) => void;
}) {
  return (
    <fieldset class="press-question" data-question={props.question}>
      <legend>{props.ask}</legend>
      <div class="press-options">
        <For each={props.options}>
          {(option) => (
            <button
              type="button"
              class="option"
              data-option={String(option.value)}
              aria-pressed={option.value === props.chosen}
              onClick={() => props.onChoose(option.value)}
            >
              {option.name}
              {option.also === undefined ? null : <small>{option.also}</small>}
            </button>
          )}
        </For>
      </div>
    </fieldset>
  );
}
