import { Show } from 'solid-js';
import { BigButton } from '../../parts/BigButton';
import { HoldButton } from '../../parts/HoldButton';
import { useWords } from '../../parts/useWords';
import type { Sender } from '../sender';
import type { Inside } from './Processing';
import type { RunningStrand } from './viewProcessing';

/** What may be done with the strand that is shown large. Over time, taking it off comes first. */
export function ProcessingActions(props: {
  readonly one: RunningStrand;
  readonly sender: Sender;
  readonly onInside: (inside: Inside) => void;
}) {
  const words = useWords();
  const said = () => words.strandTest.processing;
  const zone = () => props.one.zone;
  const zoneName = () => words.general.zones[zone()];
  const isOver = () => props.one.reading.phase === 'over';
  const takeOff = () =>
    isOver()
      ? void props.sender.send({ type: 'STRAND_TAKEN_OFF', answers: { zone: zone(), why: 'timeIsUp' } })
      : props.onInside('takeOff');

  return (
    <>
      <HoldButton
        label={said().broke(zoneName())}
        act="strand-broke"
        onHeld={() => void props.sender.send({ type: 'STRAND_BROKE', answers: { zone: zone() } })}
      />
      <Show
        when={isOver()}
        fallback={
          <>
            <BigButton act="take-off" onPress={takeOff}>
              {said().takeOffNow(zoneName())}
            </BigButton>
            <BigButton kind="primary" act="look" onPress={() => props.onInside('look')}>
              {said().lookOf(zoneName())}
            </BigButton>
          </>
        }
      >
        <BigButton act="look" onPress={() => props.onInside('look')}>
          {said().lookOf(zoneName())}
        </BigButton>
        <BigButton kind="primary" act="take-off" onPress={takeOff}>
          {said().takeOff(zoneName())}
        </BigButton>
      </Show>
    </>
  );
}
