import { Match, Show, Switch } from 'solid-js';
import { BigButton } from '../../parts/BigButton';
import { HoldButton } from '../../parts/HoldButton';
import { useWords } from '../../parts/useWords';
import type { StepProps } from '../stepProps';
import type { Inside } from './Reaction';
import type { ReactionView } from './viewReaction';

/** While anything is on, water comes first; then to record it or to say that it was none; once recorded, what else shows and what was done. */
export function ReactionActions(
  props: Pick<StepProps, 'rinseSteps'> & {
    readonly view: ReactionView;
    readonly hasCare: boolean;
    readonly onRecord: () => void;
    readonly onRinseAll: () => void;
    readonly onInside: (inside: Inside) => void;
  },
) {
  const words = useWords();
  const said = () => words.reaction;
  /** What could not be written is only left; what is written is taken back with a reason. */
  const sayNone = () => (props.view.care === 'unwritten' ? props.rinseSteps.close() : props.onInside('none'));
  /** One zone by its name, several at once. */
  const only = () => (props.view.contacts.length === 1 ? props.view.contacts[0]?.zone : undefined);
  const sayRinse = () => {
    const zone = only();
    return zone === undefined ? said().rinsedAll : said().rinsed(words.general.zones[zone]);
  };
  const isAnyOn = () => props.view.contacts.length > 0;
  /** Always in the same place. */
  const rinse = () => (
    <BigButton kind="primary" act={`rinsed-${only() ?? 'all'}`} onPress={props.onRinseAll}>
      {sayRinse()}
    </BigButton>
  );
  return (
    <Switch>
      <Match when={props.view.care === 'seen'}>
        <BigButton act="more-signs" onPress={() => props.onInside('signs')}>
          {said().moreSigns}
        </BigButton>
        <BigButton kind={isAnyOn() ? 'plain' : 'primary'} act="care" onPress={() => props.onInside('care')}>
          {said().toCare}
        </BigButton>
        <Show when={isAnyOn()}>{rinse()}</Show>
      </Match>
      <Match when={props.view.care !== 'seen'}>
        <BigButton act="no-reaction" isWay onPress={sayNone}>
          {said().notAReaction}
        </BigButton>
        <BigButton act="signs" onPress={() => props.onInside('signs')}>
          {said().whatIsSeen}
        </BigButton>
        <HoldButton
          label={said().record}
          act="record-reaction"
          kind={isAnyOn() ? 'plain' : 'danger'}
          onHeld={props.onRecord}
        />
        <Show when={isAnyOn()}>{rinse()}</Show>
      </Match>
    </Switch>
  );
}
