import { Match, Switch } from 'solid-js';
import { BigButton } from '../../parts/BigButton';
import { HoldButton } from '../../parts/HoldButton';
import { useWords } from '../../parts/useWords';
import { isFree, type ZoneAtScale } from '../mix/viewMix';
import type { Sender } from '../sender';
import type { Inside } from './ColourOn';

/** While one zone is on, the next is weighed, put on or thrown away. */
export function OtherZoneActions(props: {
  readonly atScale: ZoneAtScale;
  readonly sender: Sender;
  readonly onInside: (inside: Inside) => void;
}) {
  const words = useWords();
  const answers = () => ({ zone: props.atScale.zone });
  return (
    <div class="aside-actions">
      <Switch>
        <Match when={props.atScale.bowlState === 'weighed'}>
          <HoldButton
            label={words.mix.throwAway}
            act="throw"
            onHeld={() => void props.sender.send({ type: 'BOWL_THROWN', answers: answers() })}
          />
          <BigButton
            act="apply"
            onPress={() => void props.sender.send({ type: 'BOWL_APPLIED', answers: answers() })}
          >
            {words.mix.apply(words.general.zones[props.atScale.zone])}
          </BigButton>
        </Match>
        <Match when={props.atScale.permit.ok && isFree(props.atScale.bowlState)}>
          <BigButton
            act={`mix-${props.atScale.zone}`}
            onPress={() => props.onInside({ mix: props.atScale.zone })}
          >
            {words.mix.weighFor(words.general.zones[props.atScale.zone])}
          </BigButton>
        </Match>
      </Switch>
    </div>
  );
}
