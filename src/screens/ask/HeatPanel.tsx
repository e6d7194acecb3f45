import { createMemo, For, Show } from 'solid-js';
import type { HabitAnswers } from '../../../shared/records/forms/hotTools';
import type { UnitSettings } from '../../../shared/units/quantity';
import { Explain } from '../../parts/Explain';
import { useWords } from '../../parts/useWords';
import { sayHeat } from './heatSaid';

/** What the told tools come to, to be read in two seconds: minutes, boil equivalents, the worst each tool reaches. */
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
    <section class="panel heat-panel" data-panel="heat" aria-live="polite">
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
            <ul class="reached">
              <For each={heat().tools}>
                {(tool) => (
                  <li>
                    <strong>{tool.title}</strong>{' '}
                    <Show when={tool.reached.at(-1)}>
                      {(worst) => <span data-worst={worst()}>{words.heat.thresholds[worst()]}</span>}
                    </Show>
                  </li>
                )}
              </For>
            </ul>
            <Explain title={words.heat.title}>
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
              <p>{words.heat.plateIsHotter}</p>
            </Explain>
            <p class="soft">{words.general.estimate}</p>
          </>
        )}
      </Show>
    </section>
  );
}
