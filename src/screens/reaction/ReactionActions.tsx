import { Match, Show, Switch } from 'solid-js';
import { BigButton } from '../../parts/BigButton';
import { HoldButton } from '../../parts/HoldButton';
import { useWords } from '../../parts/useWords';
import type { Sender } from '../sender';
import type { StepProps } from '../stepProps';
import type { Inside } from './Reaction';
import type { ReactionView } from './viewReaction';

/** First to record it or to say that it was none; once recorded, what else shows and what was done. */
export function ReactionActions(
  props: Pick<StepProps, 'rinseSteps'> & {
    readonly view: ReactionView;
    readonly sender: Sender;
    readonly hasCare: boolean;
    readonly onRecord: () => void;
    readonly onInside: (inside: Inside) => void;
  },
) {
  const words = useWords();
  const said = () => words.reaction;
  const sayNone = () => {
    if (props.view.care === 'unwritten') props.rinseSteps.close();
    else void props.sender.send({ type: 'NO_REACTION' });
  };
  return (
    <Switch>
      <Match when={props.view.care === 'seen'}>
        <BigButton act="more-signs" onPress={() => props.onInside('signs')}>
          {said().moreSigns}
        </BigButton>
        <BigButton kind="primary" act="care" onPress={() => props.onInside('care')}>
          {said().toCare}
        </BigButton>
      </Match>
      <Match when={props.view.care !== 'seen'}>
        <Show
          when={props.view.care === 'unwritten'}
          fallback={
            <HoldButton label={said().notAReaction} act="no-reaction" kind="plain" onHeld={sayNone} />
          }
        >
          <BigButton act="no-reaction" isWay onPress={sayNone}>
            {said().notAReaction}
          </BigButton>
        </Show>
        <BigButton act="signs" onPress={() => props.onInside('signs')}>
          {said().whatIsSeen}
        </BigButton>
        <HoldButton label={said().record} act="record-reaction" onHeld={props.onRecord} />
      </Match>
    </Switch>
  );
}
