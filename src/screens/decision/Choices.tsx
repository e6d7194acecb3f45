import { createMemo, For, Show } from 'solid-js';
import type { Decision } from '../../../shared/judgement/decisions';
import { useWords } from '../../parts/useWords';
import { Tile, Tiles } from '../Tiles';
import { listBeside } from './listBeside';
import type { DecisionView } from './viewDecision';

const isSameList = (one: readonly Decision[], other: readonly Decision[]): boolean =>
  one.length === other.length && one.every((decision, place) => decision === other[place]);

/** The suggestion, large and with what it means, and what may be decided instead; what is chosen is filled. */
export function Choices(props: {
  readonly view: DecisionView;
  /** What the suggestion comes to for her; empty where its meaning in general says all. */
  readonly limits: string;
  readonly chosen: Decision;
  readonly onChoose: (decision: Decision) => void;
  readonly onMore: () => void;
}) {
  const words = useWords();
  const said = () => words.decision;
  const beside = createMemo(() => listBeside(props.view, props.chosen), [], { equals: isSameList });
  const hasMore = () => props.view.choices.length > beside().length + 1;
  const isOpen = (decision: Decision) =>
    props.view.choices.some((choice) => choice.decision === decision && choice.isOpen);
  return (
    <div class="choices">
      <Tiles question="decision" label={said().titleOpen} size="pair">
        <For each={[props.view.suggested, ...beside()]}>
          {(decision) => (
            <Tile
              option={decision}
              isPressed={props.chosen === decision}
              isDisabled={!isOpen(decision)}
              onPress={() => props.onChoose(decision)}
            >
              <Show when={decision === props.view.suggested} fallback={said().decisions[decision].name}>
                <span class="suggestion">
                  <span class="suggestion-kind">{said().suggests}</span>
                  <span class="suggestion-name">{said().decisions[decision].name}</span>
                  <Show when={props.limits} fallback={<span>{said().decisions[decision].means}</span>}>
                    <span class="limits" data-line="limits">
                      {props.limits}
                    </span>
                  </Show>
                </span>
              </Show>
            </Tile>
          )}
        </For>
        <Show when={hasMore()}>
          <Tile act="show-freer" onPress={props.onMore}>
            {said().otherChoices}
          </Tile>
        </Show>
      </Tiles>
    </div>
  );
}
