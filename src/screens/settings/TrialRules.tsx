import { For } from 'solid-js';
import { ASSUMED_DRYER_DISTANCE_CM } from '../../../shared/heat/warmthTrial';
import { brand } from '../../../shared/units/brand';
import { formatLength } from '../../../shared/units/format';
import { type Centimetre, type Inch, toCentimetres, toInches } from '../../../shared/units/length';
import type { UnitSettings } from '../../../shared/units/quantity';
import { useWords } from '../../parts/useWords';

/** At least so far, in whole units, never nearer. */
const findDistance = ({ length }: UnitSettings) =>
  length === 'cm'
    ? brand<Centimetre>(ASSUMED_DRYER_DISTANCE_CM)
    : toCentimetres(brand<Inch>(Math.ceil(toInches(brand(ASSUMED_DRYER_DISTANCE_CM)))));

/** What a warmth trial needs before it starts, what it tells, and what would tell more. */
export function TrialRules(props: { readonly units: UnitSettings }) {
  const words = useWords();
  const said = () => words.warmthTrial;
  return (
    <div class="columns trial-rules">
      <section class="panel">
        <h2>{said().before}</h2>
        <ol>
          <For each={said().rules(formatLength(findDistance(props.units), props.units, words.locale))}>
            {(rule) => <li>{rule}</li>}
          </For>
        </ol>
        <p class="soft">{said().marks}</p>
      </section>
      <div class="column">
        <section class="panel">
          <h2>{said().tellsTitle}</h2>
          <p>{said().ofSkin}</p>
        </section>
        <section class="panel">
          <h2>{said().betterTitle}</h2>
          <p>{said().better}</p>
        </section>
      </div>
    </div>
  );
}
