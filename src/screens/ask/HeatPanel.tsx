import { createMemo, For, Show } from 'solid-js';
import type { HabitAnswers } from '../../../shared/records/forms/hotTools';
import type { UnitSettings } from '../../../shared/units/quantity';
import { useWords } from '../../parts/useWords';
import { sayHeat } from './heatSaid';

/** What the told tools come to, from the answers that are kept. */
export function HeatPanel(props: {
  readonly habits: readonly HabitAnswers[] | undefined;
  readonly units: UnitSettings;
}) {
  const words = useWords();
  const said = createMemo(() => {
    const { habits } = props;
    return habits === undefined || habits.length === 0 ? null : sayHeat(habits, words, props.units);
  });
  return (
    <section class="panel" data-panel="heat" aria-live="polite">
      <h2>{words.heat.title}</h2>
      <Show when={said()} fallback={<p>{words.heat.none}</p>}>
        {(heat) => (
          <>
            <p class="panel-figure" data-figure="iron-minutes">
              {words.heat.ironMinutes(heat().ironMinutes)}
            </p>
            <p class="panel-figure" data-figure="boils">
              {words.heat.boils(heat().boils)}
            </p>
            <p>{heat().byWetness.join(' · ')}</p>
            <For each={heat().tools}>
              {(tool) => (
                <div>
                  <h3>{tool.title}</h3>
                  <ul class="reached">
                    <For each={tool.reached}>
                      {(id) => <li data-threshold={id}>{words.heat.thresholds[id]}</li>}
                    </For>
                  </ul>
                </div>
              )}
            </For>
            <p class="soft">
              {words.heat.plateIsHotter} {words.general.estimate}
            </p>
          </>
        )}
      </Show>
    </section>
  );
}
