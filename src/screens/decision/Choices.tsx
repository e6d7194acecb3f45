import { createMemo, createSignal, For, Show } from 'solid-js';
import type { Decision } from '../../../shared/judgement/decisions';
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
  const [isFreerOpen, setIsFreerOpen] = createSignal(false);
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
    <section class="panel" data-question="decision" data-suggested={props.view.suggested}>
      <h2>{props.chosen === props.view.suggested ? said().suggests : said().insteadOf}</h2>
      <p class="big-word">{said().decisions[props.chosen].name}</p>
      <p>{said().decisions[props.chosen].means}</p>
      <Show when={props.chosen !== props.view.suggested}>
        <h3>{said().suggests}</h3>
        <div class="options">{renderChoice(props.view.suggested)}</div>
      </Show>
      <Show when={lessFree().length > 0}>
        <h3>{said().lessFree}</h3>
        <div class="options">
          <For each={lessFree()}>{renderChoice}</For>
        </div>
      </Show>
      <Show when={freer().length > 0}>
        <Show
          when={isFreerOpen() || freer().includes(props.chosen)}
          fallback={
            <button type="button" class="option" data-act="show-freer" onClick={() => setIsFreerOpen(true)}>
              {said().freerMore}
            </button>
          }
        >
          <h3>{said().freer}</h3>
          <p class="soft">{said().freerHint}</p>
          <div class="options">
            <For each={freer()}>{renderChoice}</For>
          </div>
        </Show>
      </Show>
      <Show when={props.view.choices.some(({ isOpen }) => !isOpen)}>
        <p class="soft">{said().notOpen}</p>
      </Show>
    </section>
  );
}

const isSameList = (one: readonly Decision[], other: readonly Decision[]): boolean =>
  one.length === other.length && one.every((decision, place) => decision === other[place]);
