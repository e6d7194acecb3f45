import { For, Show } from 'solid-js';
import type { HeatFigure } from '../../../shared/heat/marks';
import type { Answers } from '../../../shared/records/forms/asked';
import type { Settings } from '../../../shared/records/settings';
import { useWords } from '../../parts/useWords';
import { explainHair, saySource } from './explainHair';
import './map.css';
import { isOfHair } from './sayHair';
import type { HairView } from './viewHair';

/** Every figure of the map, each opened by a tap: inputs, formula in words, source and mark. One is open from the start. */
export function HairExplained(props: {
  readonly view: HairView;
  readonly answers: Answers;
  readonly settings: Settings;
  readonly first: HeatFigure;
}) {
  const words = useWords();
  const said = () => words.hair;
  return (
    <div class="hair-explained">
      <For each={explainHair(props.view, props.answers, words, props.settings)}>
        {(figure) => (
          <details class="explained" data-explained={figure.id} open={figure.id === props.first}>
            <summary>
              <span>{figure.name}</span> <strong>{figure.value}</strong>
            </summary>
            <dl>
              <Show when={figure.inputs.length > 0}>
                <dt>{said().from}</dt>
                <For each={figure.inputs}>{(input) => <dd>{input}</dd>}</For>
              </Show>
              <dt>{said().howSaid}</dt>
              <dd>{figure.how}</dd>
            </dl>
            <p class="soft" data-line="source">
              {figure.source}
            </p>
          </details>
        )}
      </For>
      <Show when={props.view.reached.some(isOfHair)}>
        <h3>{said().thresholdsTitle}</h3>
        <ul class="reached">
          <For each={props.view.reached.filter(isOfHair)}>
            {(each) => (
              <li data-threshold={each.id}>
                {words.heat.thresholds[each.id]} <span class="soft">{saySource(each.mark, words)}</span>
              </li>
            )}
          </For>
        </ul>
        <p>{said().plateIsHotter}</p>
      </Show>
      <p>{said().notReckoned}</p>
      <p class="soft">{words.general.estimate}</p>
    </div>
  );
}
