import { For, Show } from 'solid-js';
import type { NumberQuestion } from '../../../shared/records/form';
import { findShownUnit } from '../../../shared/units/quantity';
import { useWords } from '../useWords';
import { nameRefusalId } from './Field';
import type { FieldProps } from './field';
import { listNumberPicks, writeDefault } from './numberPicks';

/**
 * A figure, tapped or typed, with its unit. What was typed stays as it was typed, right or wrong.
 * Checked in tests/src/parts/formFields.test.tsx.
 */
export function NumberField(props: FieldProps<NumberQuestion>) {
  const words = useWords();
  const isUnknown = () => (props.value ?? props.question.or) === 'unknown' && props.question.unknown === true;
  const typed = () => {
    if (isUnknown()) return '';
    return typeof props.value === 'string' ? props.value : writeDefault(props.question, props.units);
  };
  const unit = () => findShownUnit(props.question.field.quantity, props.units).symbol;
  const picks = () => listNumberPicks(props.name, props.question, props.units, props.picks);
  const isRefused = () => props.refusals.some(({ path }) => path === props.path);

  return (
    <>
      <div class="number-side">
        <span class="number-box">
          <input
            type="text"
            inputmode="decimal"
            autocomplete="off"
            aria-label={props.words.ask}
            aria-describedby={nameRefusalId(props.path)}
            aria-invalid={isRefused()}
            value={typed()}
            onInput={(event) => props.onChange(event.currentTarget.value)}
          />
          <Show when={unit()}>{(symbol) => <span class="number-unit">{symbol()}</span>}</Show>
        </span>
        <Show when={props.question.unknown}>
          <button
            type="button"
            class="option"
            data-option="unknown"
            aria-pressed={isUnknown()}
            onClick={() => props.onChange(isUnknown() ? undefined : 'unknown')}
          >
            {words.general.dontKnow}
          </button>
        </Show>
      </div>
      <Show when={picks().length > 0}>
        <div class="picks">
          <For each={picks()}>
            {(pick) => (
              <button
                type="button"
                class="option pick"
                data-option={pick}
                aria-pressed={typed() === pick}
                onClick={() => props.onChange(pick)}
              >
                {pick}
              </button>
            )}
          </For>
        </div>
      </Show>
    </>
  );
}
