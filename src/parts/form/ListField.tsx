import { Index, type JSX, Show } from 'solid-js';
import type { ListQuestion } from '../../../shared/records/form';
import type { RawForm } from '../../../shared/records/readForm';
import { formatQuantity } from '../../../shared/units/format';
import { useWords } from '../useWords';
import type { FieldProps } from './field';

/** What else stands in a row: given what is in it so far, and its place in the list. */
export type RenderInRow = (row: () => RawForm, index: number) => JSX.Element;

/** The same few questions for each of several things; a row goes in below and out by its own button. */
export function ListField(
  props: FieldProps<ListQuestion> & {
    readonly renderRow: (row: () => RawForm, index: number, change: (row: RawForm) => void) => JSX.Element;
    readonly renderInRow?: RenderInRow | undefined;
  },
) {
  const words = useWords();
  const rows = () => (Array.isArray(props.value) ? (props.value as readonly RawForm[]) : []);
  const countRow = (index: number) => formatQuantity(index + 1, 'count', props.units, words.locale);
  const change = (index: number, row: RawForm) =>
    props.onChange(rows().map((before, place) => (place === index ? row : before)));

  /** The last row taken out leaves the question unanswered: that there is none is said by its own button. */
  const remove = (index: number) => {
    const left = rows().filter((_, place) => place !== index);
    props.onChange(left.length === 0 ? undefined : left);
  };

  return (
    <div class="rows">
      <Index each={rows()}>
        {(row, index) => (
          <section class="row" data-row={index} aria-label={props.words.rowTitle?.(countRow(index))}>
            <h2 class="row-title">{props.words.rowTitle?.(countRow(index))}</h2>
            {props.renderRow(row, index, (next) => change(index, next))}
            {props.renderInRow?.(row, index)}
            <button
              type="button"
              class="option remove-row"
              data-act="remove-row"
              onClick={() => remove(index)}
            >
              {props.words.removeRow?.(countRow(index))}
            </button>
          </section>
        )}
      </Index>
      <div class="options">
        <Show when={rows().length === 0 && props.question.min === 0 && props.words.noRows}>
          {(noRows) => (
            <button
              type="button"
              class="option"
              data-option="none"
              aria-pressed={Array.isArray(props.value)}
              onClick={() => props.onChange([])}
            >
              {noRows()}
            </button>
          )}
        </Show>
        <Show when={rows().length < props.question.max}>
          <button
            type="button"
            class="option add-row"
            data-act="add-row"
            onClick={() => props.onChange([...rows(), {}])}
          >
            {props.words.addRow}
          </button>
        </Show>
      </div>
    </div>
  );
}
