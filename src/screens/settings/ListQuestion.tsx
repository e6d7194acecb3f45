import { createMemo } from 'solid-js';
import { readIngredientList } from '../../../shared/chemistry/ingredients/readIngredientList';
import { formatQuantity } from '../../../shared/units/format';
import type { UnitSettings } from '../../../shared/units/quantity';
import { nameRefusalId } from '../../parts/form/Field';
import { useWords } from '../../parts/useWords';

/** The list of a spray, typed or pasted: it stays as it came, and what keeps it from being read is said below it. */
export function ListQuestion(props: {
  readonly path: string;
  readonly typed: string;
  readonly units: UnitSettings;
  /** Something in it is kept by no field, though it reads as a list. */
  readonly isMalformed: boolean;
  readonly onChange: (text: string) => void;
}) {
  const words = useWords();
  const asks = () => words.settings.questions.shelf.rows.ingredients;
  const refusal = createMemo(() => {
    const read = readIngredientList(props.typed.trim());
    if (read.ok) return props.isMalformed ? ({ code: 'malformed' } as const) : null;
    return read.error.code === 'empty' ? null : read.error;
  });
  const saysRefusal = () => {
    const error = refusal();
    if (error === null) return '';
    const write = (count: number) => formatQuantity(count, 'count', props.units, words.locale);
    const most = 'most' in error ? write(error.most) : '';
    return words.ingredients.refusals[error.code](write(props.typed.trim().length), most);
  };
  return (
    <fieldset class="field" data-question={props.path} data-kind="text" data-refused={refusal()?.code}>
      <legend>{asks().ask}</legend>
      <p class="field-hint">{asks().hint}</p>
      <textarea
        class="list-box"
        autocomplete="off"
        spellcheck={false}
        aria-label={asks().ask}
        aria-describedby={nameRefusalId(props.path)}
        aria-invalid={refusal() !== null}
        value={props.typed}
        onInput={(event) => props.onChange(event.currentTarget.value)}
      />
      <p class="field-refusal" id={nameRefusalId(props.path)} aria-live="polite">
        {saysRefusal()}
      </p>
    </fieldset>
  );
}
