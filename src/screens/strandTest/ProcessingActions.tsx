import { findSigns } from '../../../shared/records/gradeOutcome';
import { BigButton } from '../../parts/BigButton';
import { useWords } from '../../parts/useWords';
import type { Sender } from '../sender';
import type { Inside } from './Processing';
import type { RunningStrand } from './viewProcessing';

/**
 * What may be done with the strand that is shown large. Each action keeps its place when the time is up, so that a
 * finger on its way to a look takes nothing off; over time, and once it was stretchy, the take-off is the one that stands out.
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
  /** Its time is up, or a look found it stretchy: off it comes. */
  const isToComeOff = () => isOver() || findSigns(props.one.strand).hasWeakened;
  const takeOff = () =>
    isOver()
      ? void props.sender.send({ type: 'STRAND_TAKEN_OFF', answers: { zone: zone(), why: 'timeIsUp' } })
      : props.onInside('takeOff');

  return (
    <>
      <BigButton kind={isToComeOff() ? 'attention' : 'plain'} act="take-off" onPress={takeOff}>
        {isOver() ? said().takeOff(zoneName()) : said().takeOffNow(zoneName())}
      </BigButton>
      <BigButton kind={isToComeOff() ? 'plain' : 'primary'} act="look" onPress={() => props.onInside('look')}>
        {said().lookOf(zoneName())}
      </BigButton>
    </>
  );
}
