import { For, Show } from 'solid-js';
import { compareWarmth, type WarmthTimes } from '../../../shared/heat/warmthTrial';
import { formatQuantity } from '../../../shared/units/format';
import type { UnitSettings } from '../../../shared/units/quantity';
import { useWords } from '../../parts/useWords';
import { sayRun } from './sprayRow';

/** Both times side by side, and in a sentence what they tell; before the second run, what it needs. */
export function TrialResult(props: { readonly times: Partial<WarmthTimes>; readonly units: UnitSettings }) {
  const words = useWords();
  const said = () => words.warmthTrial;
  const arms = () =>
    [
      ['bare', props.times.bareS],
      ['sprayed', props.times.sprayedS],
    ] as const;
  const told = () => {
    const { bareS, sprayedS } = props.times;
    if (bareS === undefined || sprayedS === undefined) return null;
    const tells = compareWarmth({ bareS, sprayedS });
    const by = 'byS' in tells ? formatQuantity(tells.byS, 'seconds', props.units, words.locale) : '';
    return { code: tells.code, says: said().tells[tells.code](by) };
  };
  return (
    <>
      <div class="trial-times">
        <For each={arms()}>
          {([arm, seconds]) => (
            <section class="panel" data-arm={arm}>
              <h2>{said().arms[arm]}</h2>
              <p class="trial-time">{seconds === undefined ? '' : sayRun(seconds, words, props.units)}</p>
            </section>
          )}
        </For>
      </div>
      <Show when={told()} fallback={<p class="big-word">{said().next}</p>}>
        {(tells) => (
          <div class="trial-told" data-told={tells().code} role="status">
            <p class="big-word">{tells().says}</p>
            <p>{said().ofSkin}</p>
            <p>{said().betterWay}</p>
          </div>
        )}
      </Show>
    </>
  );
}
