import { WARMTH_TRIAL_CAP_S } from '../../../shared/heat/warmthTrial';
import { formatQuantity } from '../../../shared/units/format';
import type { UnitSettings } from '../../../shared/units/quantity';
import '../../parts/clock.css';
import { useWords } from '../../parts/useWords';

/** One forearm under the dryer: for how long so far, and that it is over at the cap. */
export function TrialRun(props: {
  readonly arm: string;
  readonly seconds: number;
  readonly units: UnitSettings;
}) {
  const words = useWords();
  const said = () => words.warmthTrial;
  const isCapped = () => props.seconds >= WARMTH_TRIAL_CAP_S;
  return (
    <section class="clock-face trial-run" data-tone={isCapped() ? 'over' : 'running'}>
      <p class="clock-name">
        <strong>{props.arm}</strong>
      </p>
      <div class="clock-digits">{formatQuantity(props.seconds, 'seconds', props.units, words.locale)}</div>
      <p class="trial-says" role="status">
        {isCapped() ? said().capped : said().running}
      </p>
      <p class="clock-look">{isCapped() ? said().dryerAway : ''}</p>
    </section>
  );
}
