import { Show } from 'solid-js';
import { BigButton } from '../../parts/BigButton';
import { HoldButton } from '../../parts/HoldButton';
import { useWords } from '../../parts/useWords';
import type { Sender } from '../sender';
import type { Inside } from './ColourOn';
import type { BowlOnHead } from './viewHead';

/**
 * What may be done with the zone that is shown large. The one that is due stands in the corner: the look, and from
 * the way to the basin on, or once the hair was stretchy, the rinse. Rinsing is held, since a stray tap would end a clock while the
 * colour is still on; before its time the button says so.
 */
export function HeadActions(props: {
  readonly one: BowlOnHead;
  readonly sender: Sender;
  readonly onInside: (inside: Inside) => void;
}) {
  const words = useWords();
  const said = () => words.colourOn;
  const zoneName = () => words.general.zones[props.one.bowl.zone];
  const isEarly = () => props.one.reading.phase === 'running' || props.one.reading.phase === 'lookDue';
  const isToRinse = () => props.one.isWeak || !isEarly();
  const rinse = () => void props.sender.send({ type: 'BOWL_RINSED', answers: { zone: props.one.bowl.zone } });
  const Look = () => (
    <BigButton
      kind={isToRinse() ? 'plain' : 'primary'}
      act="look"
      onPress={() => props.onInside({ look: props.one.bowl.zone })}
    >
      {said().look(zoneName())}
    </BigButton>
  );
  return (
    <>
      <Show when={isToRinse()}>
        <Look />
      </Show>
      <HoldButton
        label={isEarly() ? said().rinsedEarly(zoneName()) : said().rinsed(zoneName())}
        act="rinsed"
        kind={isToRinse() ? 'danger' : 'plain'}
        onHeld={rinse}
      />
      <Show when={!isToRinse()}>
        <Look />
      </Show>
    </>
  );
}
