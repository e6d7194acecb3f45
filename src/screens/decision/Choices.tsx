import { createMemo, For, Show } from 'solid-js';
import type { Decision } from '../../../shared/judgement/decisions';
import { isMixingDecision } from '../../../shared/judgement/decisions';
import { Knot } from '../../parts/Knot';
import { useWords } from '../../parts/useWords';
import type { Choice, DecisionView } from './viewDecision';

/** The suggestion, what is more careful, and what is freer; and whether what is chosen would untie the knot. */
export function Choices(props: {
  readonly view: DecisionView;
  readonly chosen: Decision;
  readonly onChoose: (decision: Decision) => void;
}) {
  const words = useWords();
  const said = () => words.decision;
  const listKind = (kind: Choice['kind']) =>
    props.view.choices.filter((choice) => choice.kind === kind).map(({ decision }) => decision);
  const lessFree = createMemo(() => listKind('lessFree'), [], { equals: isSameList });
  const freer = createMemo(() => listKind('freer'), [], { equals: isSameList });
  const find = (decision: Decision) => props.view.choices.find((choice) => choice.decision === decision);

  const renderChoice = (decision: Decision) => (
    <button
      type="button"
      class="option"
      data-option={decision}
      aria-pressed={props.chosen === decision}
      disabled={find(decision)?.isOpen !== true}
      onClick={() => props.onChoose(decision)}
    >
      {said().decisions[decision].name}
    </button>
  );

  return (
    <div class="column">
      <section class="panel" data-panel="suggestion" data-suggested={props.view.suggested}>
        <h2>{said().suggests}</h2>
        <p class="big-word">{said().decisions[props.view.suggested].name}</p>
        <p>{said().decisions[props.view.suggested].means}</p>
      </section>
      <section class="panel" data-question="decision">
        <h2>{said().other}</h2>
        <div class="options">{renderChoice(props.view.suggested)}</div>
        <Show when={lessFree().length > 0}>
          <h3>{said().lessFree}</h3>
          <div class="options">
            <For each={lessFree()}>{renderChoice}</For>
          </div>
        </Show>
        <Show when={freer().length > 0}>
          <h3>{said().freer}</h3>
          <p class="soft">{said().freerHint}</p>
          <div class="options">
            <For each={freer()}>{renderChoice}</For>
          </div>
        </Show>
        <Show when={props.view.choices.some(({ isOpen }) => !isOpen)}>
          <p class="soft">{said().notOpen}</p>
        </Show>
        <Show when={props.chosen !== props.view.suggested}>
          <p>
            <strong>{said().decisions[props.chosen].name}</strong>
            {': '}
            {said().decisions[props.chosen].means}
          </p>
        </Show>
        <p class="knot-word" data-knot="tied" data-unties={isMixingDecision(props.chosen)}>
          <Knot isUntied={false} />
          <span>
            <strong>{said().noMixYet}</strong>{' '}
            {isMixingDecision(props.chosen) ? said().wouldUntie : said().wouldStayTied}
          </span>
        </p>
      </section>
    </div>
  );
}

const isSameList = (one: readonly Decision[], other: readonly Decision[]): boolean =>
  one.length === other.length && one.every((decision, place) => decision === other[place]);
