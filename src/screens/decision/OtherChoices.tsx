import { createMemo, For, Show } from 'solid-js';
import type { Decision } from '../../../shared/judgement/decisions';
import { BigButton } from '../../parts/BigButton';
import { StepPage } from '../../parts/StepPage';
import { useWords } from '../../parts/useWords';
import type { StepProps } from '../stepProps';
import { Tile, Tiles } from '../Tiles';
import { listBeside } from './listBeside';
import type { Choice, DecisionView } from './viewDecision';

/** What else may be decided, with what it means: as careful as suggested or more, and further; then what no strand allows. */
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
  const beside = createMemo(() => listBeside(props.view, props.chosen));
  const listKind = (kind: Choice['kind']) =>
    props.view.choices.filter(
      (choice) => choice.kind === kind && choice.isOpen && !beside().includes(choice.decision),
    );
  const groups = createMemo(() =>
    (['careful', 'freer'] as const).filter((kind) => listKind(kind).length > 0),
  );
  const listClosed = () =>
    props.view.choices.filter(({ isOpen }) => !isOpen).map(({ decision }) => said().decisions[decision].name);
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
              {kind === 'freer' ? said().freer : said().careful}
              <Show when={kind === 'freer'}>
                <small>{said().freerHint}</small>
              </Show>
            </h2>
            <Tiles question="decision" label={kind === 'freer' ? said().freer : said().careful} size="wide">
              <For each={listKind(kind)}>
                {({ decision }) => (
                  <Tile
                    option={decision}
                    isPressed={props.chosen === decision}
                    onPress={() => props.onChoose(decision)}
                  >
                    {said().decisions[decision].name}
                    <span class="answer-more">{said().decisions[decision].means}</span>
                  </Tile>
                )}
              </For>
            </Tiles>
          </section>
        )}
      </For>
      <Show when={listClosed().length > 0}>
        <p class="soft" data-line="not-open">
          {said().notOpen(listClosed())}
        </p>
      </Show>
    </StepPage>
  );
}
