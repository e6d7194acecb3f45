import { createMemo, For, Show } from 'solid-js';
import type { Decision } from '../../../shared/judgement/decisions';
import { BigButton } from '../../parts/BigButton';
import { StepPage } from '../../parts/StepPage';
import { useWords } from '../../parts/useWords';
import type { StepProps } from '../stepProps';
import { Tile, Tiles } from '../Tiles';
import type { Choice, DecisionView } from './viewDecision';

/** Everything that may be decided, with what it means: more careful than suggested, and further. */
export function OtherChoices(
  props: StepProps & {
    readonly view: DecisionView;
    readonly chosen: Decision;
    readonly onChoose: (decision: Decision) => void;
    readonly onClose: () => void;
  },
) {
  const words = useWords();
  const said = () => words.decision;
  const groups = createMemo(() =>
    (['lessFree', 'freer'] as const).filter((kind) => props.view.choices.some((each) => each.kind === kind)),
  );
  const listKind = (kind: Choice['kind']) => props.view.choices.filter((choice) => choice.kind === kind);
  return (
    <StepPage
      page={props.page}
      title={said().otherChoicesTitle}
      actions={
        <BigButton act="cancel" isWay onPress={props.onClose}>
          {words.general.back}
        </BigButton>
      }
    >
      <For each={groups()}>
        {(kind) => (
          <section class="choice-group">
            <h2>
              {kind === 'freer' ? said().freer : said().lessFree}
              <Show when={kind === 'freer'}>
                <small>{said().freerHint}</small>
              </Show>
            </h2>
            <Tiles question="decision" label={kind === 'freer' ? said().freer : said().lessFree} size="wide">
              <For each={listKind(kind)}>
                {({ decision, isOpen }) => (
                  <Tile
                    option={decision}
                    isPressed={props.chosen === decision}
                    isDisabled={!isOpen}
                    onPress={() => props.onChoose(decision)}
                  >
                    {said().decisions[decision].name}
                    <span class="answer-more">
                      {isOpen ? said().decisions[decision].means : said().notOpen}
                    </span>
                  </Tile>
                )}
              </For>
            </Tiles>
          </section>
        )}
      </For>
    </StepPage>
  );
}
