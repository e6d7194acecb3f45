import { Show } from 'solid-js';
import { formatQuantity } from '../../../shared/units/format';
import type { UnitSettings } from '../../../shared/units/quantity';
import { BigButton } from '../../parts/BigButton';
import { useWords } from '../../parts/useWords';
import { useRuler } from './rulerInUse';

/** Is the ruler of this tablet set, and the way to set it. */
export function RulerPanel(props: { readonly units: UnitSettings; readonly onSet: () => void }) {
  const words = useWords();
  const said = () => words.ruler.set;
  const ruler = useRuler();
  const sayState = (pxPerMm: number | null) =>
    pxPerMm === null
      ? said().notSet
      : said().kept(formatQuantity(pxPerMm, 'count', props.units, words.locale));
  return (
    <Show when={ruler}>
      {(here) => (
        <section class="panel tablet-panel" data-panel="ruler">
          <h2>{said().page}</h2>
          <p data-line="ruler-state">{sayState(here().pxPerMm())}</p>
          <BigButton act="to-ruler" isWay onPress={props.onSet}>
            {said().open}
          </BigButton>
        </section>
      )}
    </Show>
  );
}
