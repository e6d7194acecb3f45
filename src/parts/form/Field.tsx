import { createMemo, type JSX, Show } from 'solid-js';
import type { Question } from '../../../shared/records/form';
import type { FieldRefusal } from '../../../shared/records/readForm';
import type { UnitSettings } from '../../../shared/units/quantity';
import type { AnyQuestionWords } from '../../words/formWords';
import { sayFieldRefusal } from '../../words/sayRefusal';
import { useWords } from '../useWords';
import './form.css';

/** The id of what is said at a field, for the control that it describes. */
export const nameRefusalId = (path: string): string => `said-${path.replaceAll('.', '-')}`;

/** A third of the page, half of it, or all: by what has to stand side by side. */
function findRoom(kind: Question['kind'], offers: number): 'third' | 'half' | 'whole' {
  if (kind === 'choice' && offers === 2) return 'third';
  if (kind === 'number' && offers <= 6) return 'half';
  return 'whole';
}

/** One question: what is asked, its control, and right below it what is wrong. */
export function Field(props: {
  readonly path: string;
  readonly words: AnyQuestionWords;
  readonly refusals: readonly FieldRefusal[];
  readonly units: UnitSettings;
  readonly kind: Question['kind'];
  /** So many answers are offered in one tap: what decides how much room the question takes. */
  readonly offers: number;
  readonly children: JSX.Element;
}) {
  const words = useWords();
  const refusal = createMemo(() => props.refusals.find(({ path }) => path === props.path));
  const saysRefusal = () => {
    const said = refusal();
    return said === undefined ? '' : sayFieldRefusal(said, words, props.units);
  };
  return (
    <fieldset
      class="field"
      data-question={props.path}
      data-kind={props.kind}
      data-room={findRoom(props.kind, props.offers)}
      data-refused={refusal()?.code}
    >
      <legend>{props.words.ask}</legend>
      <Show when={props.words.hint}>{(hint) => <p class="field-hint">{hint()}</p>}</Show>
      {props.children}
      <p class="field-refusal" id={nameRefusalId(props.path)} aria-live="polite">
        {saysRefusal()}
      </p>
    </fieldset>
  );
}
