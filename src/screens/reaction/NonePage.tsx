import { createSignal, For, Show } from 'solid-js';
import { noReactionForm } from '../../../shared/records/forms/course';
import { BigButton } from '../../parts/BigButton';
import { HoldButton } from '../../parts/HoldButton';
import { Refusal } from '../../parts/Refusal';
import { StepPage } from '../../parts/StepPage';
import { useWords } from '../../parts/useWords';
import type { Sender } from '../sender';
import type { StepProps } from '../stepProps';
import { Tile, Tiles } from '../Tiles';
import { OnHerLine } from './OnHerLine';
import './tellsOf.css';
import type { ReactionView } from './viewReaction';

const reasons = noReactionForm.why.options.filter((each) => each !== noReactionForm.why.or);

/** It was none: why, in the name of whoever is at the tablet, each reason held. What is on goes on counting above. */
export function NonePage(
  props: StepProps & { readonly view: ReactionView; readonly sender: Sender; readonly onClose: () => void },
) {
  const words = useWords();
  const said = () => words.reaction;
  const sayNone = async (why: string) => {
    if (await props.sender.send({ type: 'NO_REACTION', answers: { why, stillOn: stillOn() } }))
      props.onClose();
  };
  /** Water was said to run: is that so? Asked only then. */
  const [answered, setAnswered] = createSignal<'no' | 'yes' | null>(null);
  const isAsked = () => props.view.waters.length > 0;
  const stillOn = () => (isAsked() ? (answered() ?? 'no') : 'no');
  return (
    <StepPage
      page={{ ...props.page, isOnSkin: false, breaking: [] }}
      title={said().none.ask}
      {...(props.by === '' ? {} : { also: props.by })}
      actions={
        <>
          <Refusal refusal={props.sender.refusal()} />
          <BigButton kind="primary" act="cancel" isWay onPress={props.onClose}>
            {said().toRinse}
          </BigButton>
        </>
      }
    >
      <OnHerLine view={props.view} />
      <Show when={isAsked()}>
        <h2 class="still-on-ask">{said().stillOn.ask}</h2>
        <Tiles question="stillOn" label={said().stillOn.ask} size="two">
          <For each={noReactionForm.stillOn.options}>
            {(option) => (
              <Tile
                option={option}
                isLooked
                isPressed={answered() === option}
                onPress={() => setAnswered(option)}
              >
                {said().stillOn.options[option]}
              </Tile>
            )}
          </For>
        </Tiles>
        <p class="lead">{said().stillOnHint}</p>
      </Show>
      <fieldset class="tells-of-tiles none-tiles" data-question="why">
        <legend class="only-heard">{said().none.ask}</legend>
        <For each={reasons}>
          {(why) => (
            <HoldButton
              label={said().none.options[why]}
              act={`none-${why}`}
              kind="plain"
              isDisabled={isAsked() && answered() === null}
              onHeld={() => void sayNone(why)}
            />
          )}
        </For>
      </fieldset>
    </StepPage>
  );
}
