import { createMemo, createSignal, For, type JSX, Show } from 'solid-js';
import type { Form, Question } from '../../../shared/records/form';
import { type FieldRefusal, isAsked, type Raw, type RawForm } from '../../../shared/records/readForm';
import type { UnitSettings } from '../../../shared/units/quantity';
import type { AnyFormWords } from '../../words/formWords';
import { useWords } from '../useWords';
import { ChoiceField, ChoicesField } from './ChoiceField';
import { Field } from './Field';
import type { FieldProps, Picks } from './field';
import { ListField } from './ListField';
import { NumberField } from './NumberField';
import { listNumberPicks } from './numberPicks';
import { TextField } from './TextField';
import { TimeField } from './TimeField';

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
    return question === undefined ? null : renderQuestion(props, name, question);
  };

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

function renderQuestion(props: QuestionsProps, name: string, question: Question): JSX.Element {
  const path = props.prefix + name;
  const field = {
    path,
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
  } satisfies Omit<FieldProps<Question>, 'question'>;

  return (
    <Field
      path={path}
      words={field.words}
      refusals={props.refusals}
      units={props.units}
      kind={question.kind}
      offers={countOffers(props, name, question)}
    >
      {renderControl(props, field, question)}
    </Field>
  );
}

const countOffers = (props: QuestionsProps, name: string, question: Question): number => {
  if (question.kind === 'number') return listNumberPicks(name, question, props.units, props.picks).length;
  return 'options' in question ? question.options.length : 0;
};

function renderControl(
  props: QuestionsProps,
  field: Omit<FieldProps<Question>, 'question'>,
  question: Question,
): JSX.Element {
  switch (question.kind) {
    case 'choice':
      return <ChoiceField {...field} question={question} />;
    case 'choices':
      return <ChoicesField {...field} question={question} />;
    case 'number':
      return <NumberField {...field} question={question} />;
    case 'text':
      return <TextField {...field} question={question} />;
    case 'time':
      return <TimeField {...field} question={question} />;
    case 'list':
      return (
        <ListField
          {...field}
          question={question}
          renderRow={(row, index, change) => (
            <Questions
              {...props}
              form={question.of}
              words={field.words.rows ?? {}}
              raw={row()}
              prefix={`${field.path}.${index}.`}
              onChange={(name, value) => change({ ...row(), [name]: value })}
            />
          )}
        />
      );
  }
}
