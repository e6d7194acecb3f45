import { createMemo, type JSX, onMount, Show } from 'solid-js';
import type { Question } from '../../../../shared/records/form';
import type { FieldRefusal, Raw } from '../../../../shared/records/readForm';
import type { UnitSettings } from '../../../../shared/units/quantity';
import { sayFieldRefusal } from '../../../words/sayRefusal';
import { useWords } from '../../useWords';
import { nameRefusalId } from '../Field';
import type { Picks, Waiting } from '../field';
import { ChoicesTiles, ChoiceTiles } from './ChoiceTiles';
import type { ControlProps } from './control';
import { ListTiles } from './ListTiles';
import { NumberTiles } from './NumberTiles';
import type { Place } from './places';
import { TextTiles } from './TextTiles';
import { TimeTiles } from './TimeTiles';

interface SheetQuestionProps {
  readonly place: Place;
  /** "Flat iron": of which row it is asked. */
  readonly of: string;
  readonly refusals: readonly FieldRefusal[];
  readonly units: UnitSettings;
  readonly nowMs: number;
  readonly picks: Picks | undefined;
  readonly waiting: Waiting | undefined;
  /** Whether the eyes and the keys are taken to it: not when the page has just come up. */
  readonly takesFocus: boolean;
  /** Beside the heading: how else its answer can be found. */
  readonly corner: JSX.Element;
  /** Below the heading. */
  readonly beside: JSX.Element;
  readonly onChange: (value: Raw) => void;
  readonly onDone: () => void;
  readonly onGoTo: (path: string) => void;
}

/** One question for the whole sheet: asked in large words, its control, and what is wrong with it. */
export function SheetQuestion(props: SheetQuestionProps) {
  const words = useWords();
  const refusal = createMemo(() => props.refusals.find(({ path }) => path === props.place.path));
  const saysRefusal = () => {
    const said = refusal();
    return said === undefined ? '' : sayFieldRefusal(said, words, props.units);
  };
  let heading!: HTMLHeadingElement;
  onMount(() => props.takesFocus && heading.focus({ preventScroll: true }));
  const ask = () => {
    const { words: said, question } = props.place;
    const isAnother =
      question.kind === 'list' && Array.isArray(props.place.value) && props.place.value.length > 0;
    return isAnother ? (said.askAnother ?? said.ask) : said.ask;
  };
  return (
    <fieldset
      class="sheet-question"
      data-question={props.place.path}
      data-kind={props.place.question.kind}
      data-refused={refusal()?.code}
    >
      <legend>
        <h2 ref={heading} class="sheet-ask" data-named={ask().length > NAMED} tabindex="-1">
          <Show when={props.of}>{(of) => <span class="sheet-of">{`${of()} · `}</span>}</Show>
          {ask()}
        </h2>
      </legend>
      {props.corner}
      {props.beside}
      <Show when={props.place.words.hint}>{(hint) => <p class="sheet-hint">{hint()}</p>}</Show>
      <p class="field-refusal" id={nameRefusalId(props.place.path)} aria-live="polite">
        {saysRefusal()}
      </p>
      <Control {...props} />
    </fieldset>
  );
}

/** A heading of more letters holds the whole name of a product, and is smaller, so that the keys below keep their room. */
const NAMED = 38;

/** The control of its kind. A sheet is made anew for each question, so the kind never changes. */
function Control(props: SheetQuestionProps): JSX.Element {
  const field: Omit<ControlProps<Question>, 'question'> = {
    path: props.place.path,
    name: props.place.name,
    get words() {
      return props.place.words;
    },
    get value() {
      return props.place.value;
    },
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
    get waiting() {
      return props.waiting;
    },
    onChange: (value: Raw) => props.onChange(value),
    onDone: () => props.onDone(),
  };
  const { question } = props.place;
  switch (question.kind) {
    case 'choice':
      return <ChoiceTiles {...field} question={question} />;
    case 'choices':
      return <ChoicesTiles {...field} question={question} />;
    case 'number':
      return <NumberTiles {...field} question={question} />;
    case 'text':
      return <TextTiles {...field} question={question} />;
    case 'time':
      return <TimeTiles {...field} question={question} />;
    case 'list':
      return <ListTiles {...field} question={question} onGoTo={(path) => props.onGoTo(path)} />;
  }
}
