import { createMemo, Show } from 'solid-js';
import type { Answers } from '../../../shared/records/forms/asked';
import type { Settings } from '../../../shared/records/settings';
import { formatQuantity, formatRange } from '../../../shared/units/format';
import { StrandMap } from '../../parts/strandMap/StrandMap';
import { useWords } from '../../parts/useWords';
import '../map/map.css';
import { roundAsKnown, roundRange } from '../map/saySizes';
import { sayStrandMap } from '../map/sayStrandMap';
import { viewHair } from '../map/viewHair';
import { WhyOfHair } from '../map/WhyOfHair';

/** What heat and bleach have done, to be read in two seconds: two figures at the tip, and the whole strand below. */
export function HeatPanel(props: { readonly answers: Answers; readonly settings: Settings }) {
  const words = useWords();
  const said = () => words.hair;
  const view = createMemo(() => viewHair(props.answers, props.settings));
  const map = createMemo(() => sayStrandMap(view(), props.answers, words, props.settings.units));
  const isNothingTold = () => view().history.habits.length === 0 && view().history.bleaches.length === 0;
  const sayTip = (name: 'ironMin' | 'boilEquivalents') => {
    const range = name === 'ironMin' ? roundRange(view().tip[name], 0) : roundAsKnown(view().tip[name]);
    const write = (value: number) => formatQuantity(value, 'count', props.settings.units, words.locale);
    if (range.low === range.high) return { likely: write(range.typical), band: '' };
    const band = said().band(formatRange(range, 'count', props.settings.units, words.locale));
    return { likely: said().about(write(range.typical)), band };
  };
  return (
    <section class="panel heat-panel" data-panel="heat" aria-live="polite">
      <Show when={!isNothingTold()} fallback={<p>{said().nothingTold}</p>}>
        <div class="hair-figures">
          <p class="hair-figure" data-figure="iron-minutes">
            <strong>{sayTip('ironMin').likely}</strong> {said().ironMinutes}{' '}
            <span class="hair-band">{sayTip('ironMin').band}</span>
          </p>
          <p class="hair-figure" data-figure="boils">
            <strong>{sayTip('boilEquivalents').likely}</strong> {said().boils}{' '}
            <span class="hair-band">{sayTip('boilEquivalents').band}</span>
          </p>
          <WhyOfHair view={view()} answers={props.answers} settings={props.settings} />
        </div>
        <StrandMap view={map()} />
        <p class="soft">{words.general.estimate}</p>
      </Show>
    </section>
  );
}
