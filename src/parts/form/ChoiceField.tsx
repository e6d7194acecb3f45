import { For } from 'solid-js';
import type { ChoiceQuestion, ChoicesQuestion } from '../../../shared/records/form';
import type { Raw } from '../../../shared/records/readForm';
import type { FieldProps } from './field';
import { OptionButton } from './OptionButton';

const isAbsolute = (question: ChoiceQuestion | ChoicesQuestion, option: string): boolean =>
  question.absolute?.includes(option) === true;

/** One of a few. */
export function ChoiceField(props: FieldProps<ChoiceQuestion>) {
  const chosen = () => props.value ?? props.question.or;
  return (
    <div class="options">
      <For each={props.question.options}>
        {(option) => (
          <OptionButton
            option={option}
            label={props.words.options?.[option] ?? option}
            isChosen={chosen() === option}
            isAbsolute={isAbsolute(props.question, option)}
            onChoose={() => props.onChange(option)}
          />
        )}
      </For>
    </div>
  );
}

const readList = (value: Raw): readonly string[] =>
  Array.isArray(value) ? (value as readonly string[]) : [];

/** What stands when one more is tapped: `none` excludes every other; an empty list is no answer yet. */
function toggle(question: ChoicesQuestion, before: readonly string[], option: string): Raw {
  if (option === question.none) return before.includes(option) ? undefined : [option];
  const others = before.filter((each) => each !== option && each !== question.none);
  const after = before.includes(option) ? others : [...others, option];
  return after.length === 0 ? undefined : after;
}

/** Any number of them, or none. */
export function ChoicesField(props: FieldProps<ChoicesQuestion>) {
  const chosen = () => readList(props.value);
  return (
    <div class="options">
      <For each={props.question.options}>
        {(option) => (
          <OptionButton
            option={option}
            label={props.words.options?.[option] ?? option}
            isChosen={chosen().includes(option)}
            isAbsolute={isAbsolute(props.question, option)}
            onChoose={() => props.onChange(toggle(props.question, chosen(), option))}
          />
        )}
      </For>
    </div>
  );
}
