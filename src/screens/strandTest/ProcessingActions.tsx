import { BigButton } from '../../parts/BigButton';
import { useWords } from '../../parts/useWords';
import type { Sender } from '../sender';
import type { Inside } from './Processing';
import type { RunningStrand } from './viewProcessing';

/**
 * What may be done with the strand that is shown large. Each action keeps its place when the time is up, so that a
 * finger on its way to a look takes nothing off; over time the take-off is the one that stands out, and one tap.
 */
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
      <BigButton kind={isOver() ? 'attention' : 'plain'} act="take-off" onPress={takeOff}>
        {isOver() ? said().takeOff(zoneName()) : said().takeOffNow(zoneName())}
      </BigButton>
      <BigButton kind={isOver() ? 'plain' : 'primary'} act="look" onPress={() => props.onInside('look')}>
        {said().lookOf(zoneName())}
      </BigButton>
    </>
  );
}
