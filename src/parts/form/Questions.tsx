import { createMemo, createSignal, For, Show } from 'solid-js';
import type { Form, Question } from '../../../shared/records/form';
import { isAsked } from '../../../shared/records/isAsked';
import type { FieldRefusal, Raw, RawForm } from '../../../shared/records/readForm';
import type { UnitSettings } from '../../../shared/units/quantity';
import type { AnyFormWords } from '../../words/formWords';
import { useWords } from '../useWords';
import type { FieldProps, Picks } from './field';
import type { RenderInRow } from './ListField';
import { OneQuestion, type RenderRow } from './OneQuestion';

interface QuestionsProps {
  readonly form: Form;
  readonly words: AnyFormWords;
  readonly raw: RawForm;
  readonly prefix: string;
  readonly onChange: (name: string, value: Raw) => void;
  readonly refusals: readonly FieldRefusal[];
  readonly units: UnitSettings;
  readonly hasAgeLine: boolean;
  readonly nowMs: number;
  readonly picks: Picks | undefined;
  readonly renderInRow?: RenderInRow | undefined;
}

/** The answers so far, as far as another question may depend on them: choices, and their defaults. */
const listChoices = (form: Form, raw: RawForm): Readonly<Record<string, unknown>> =>
  Object.fromEntries(
    Object.entries(form).map(([name, question]) => [
      name,
      raw[name] ?? ('or' in question ? question.or : undefined),
    ]),
  );

/** The questions of one form, or of one row of a list: those asked now, what is rarely asked behind "more". */
export function Questions(props: QuestionsProps) {
  const words = useWords();
  const [isMoreOpen, setIsMoreOpen] = createSignal(false);
  const asked = createMemo(() => {
    const choices = listChoices(props.form, props.raw);
    return Object.keys(props.form).filter((name) => {
      const question = props.form[name];
      return question !== undefined && isAsked(question, choices, props);
    });
  });
  const isMore = (name: string) => props.form[name]?.more === true;
  const hasRefusedMore = () =>
    props.refusals.some(({ path }) => asked().some((name) => isMore(name) && path === props.prefix + name));
  const renderNamed = (name: string) => {
    const question = props.form[name];
    if (question === undefined) return null;
    const field = nameField(props, name);
    return (
      <OneQuestion field={field} question={question} renderRow={renderRow} renderInRow={props.renderInRow} />
    );
  };
  /** A row of a list asks its own few questions in the same way. */
  const renderRow: RenderRow = (row) => (
    <Questions
      {...props}
      form={row.form}
      words={row.words}
      raw={row.raw()}
      prefix={row.prefix}
      onChange={(name, value) => row.onChange({ ...row.raw(), [name]: value })}
    />
  );

  return (
    <>
      <For each={asked().filter((name) => !isMore(name))}>{renderNamed}</For>
      <Show when={asked().some(isMore)}>
        <Show when={isMoreOpen() || hasRefusedMore()}>
          <For each={asked().filter(isMore)}>{renderNamed}</For>
        </Show>
        <button
          type="button"
          class="option more"
          data-act="more"
          aria-expanded={isMoreOpen() || hasRefusedMore()}
          onClick={() => setIsMoreOpen(!isMoreOpen())}
        >
          {isMoreOpen() ? words.general.less : words.general.more}
        </button>
      </Show>
    </>
  );
}

/** What the field of one question is given, live from the form. */
const nameField = (props: QuestionsProps, name: string): Omit<FieldProps<Question>, 'question'> => ({
  path: props.prefix + name,
  name,
  get words() {
    return props.words[name] ?? { ask: name };
  },
  get value() {
    return props.raw[name];
  },
  onChange: (value: Raw) => props.onChange(name, value),
  get refusals() {
    return props.refusals;
  },
  get units() {
    return props.units;
  },
  get nowMs() {
    return props.nowMs;
  },
  get picks() {
    return props.picks;
  },
});
