import { Show } from 'solid-js';
import { BigButton } from '../../parts/BigButton';
import { HoldButton } from '../../parts/HoldButton';
import { useWords } from '../../parts/useWords';
import type { Sender } from '../sender';
import type { Inside } from './ColourOn';
import type { BowlOnHead } from './viewHead';

/**
 * What may be done with the zone that is shown large. Near its end rinsing comes first and is one tap; before that
 * it is held, since a stray tap would end a clock while the colour is still on.
 */
export function HeadActions(props: {
  readonly one: BowlOnHead;
  readonly sender: Sender;
  readonly onInside: (inside: Inside) => void;
}) {
  const words = useWords();
  const said = () => words.colourOn;
  const zoneName = () => words.general.zones[props.one.bowl.zone];
  const isRinseTime = () => props.one.reading.phase === 'over' || props.one.reading.phase === 'nearlyDue';
  const rinse = () => void props.sender.send({ type: 'BOWL_RINSED', answers: { zone: props.one.bowl.zone } });
  return (
    <Show
      when={isRinseTime()}
      fallback={
        <>
          <HoldButton label={said().rinsed(zoneName())} act="rinsed" onHeld={rinse} />
          <BigButton kind="primary" act="look" onPress={() => props.onInside('look')}>
            {said().look(zoneName())}
          </BigButton>
        </>
      }
    >
      <BigButton act="look" onPress={() => props.onInside('look')}>
        {said().look(zoneName())}
      </BigButton>
      <BigButton kind="primary" act="rinsed" onPress={rinse}>
        {said().rinsed(zoneName())}
      </BigButton>
    </Show>
  );
}
