import { createMemo, For, Show } from 'solid-js';
import type { HeatFigure } from '../../../shared/heat/marks';
import type { Answers } from '../../../shared/records/forms/asked';
import type { Settings } from '../../../shared/records/settings';
import { useWords } from '../../parts/useWords';
import { saySource } from '../../words/saySource';
import { type Explained, explainHair } from './explainHair';
import './map.css';
import { listReachedByHair } from './sayHair';
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
  const figures = createMemo(() => explainHair(props.view, props.answers, words, props.settings));
  const ids = createMemo(() => figures().map(({ id }) => id), [], { equals: isSameList });
  const find = (id: HeatFigure) => figures().find((figure) => figure.id === id);
  const isBeyond = () => Object.values(props.view.tip.isBeyond).some(Boolean);
  const reached = () => listReachedByHair(props.view.reached);
  return (
    <div class="hair-explained">
      <For each={ids()}>
        {(id) => (
          <Show when={find(id)}>
            {(figure) => <OneFigure figure={figure()} isOpen={id === props.first} />}
          </Show>
        )}
      </For>
      <Show when={reached().length > 0}>
        <h3>{said().thresholdsTitle}</h3>
        <ul class="reached">
          <For each={reached()}>
            {(each) => (
              <li data-threshold={each.id}>
                {words.heat.thresholds[each.id]}{' '}
                <span class="soft">
                  {each.isTold ? '' : said().settingNotKnown} {saySource(each.mark, words)}
                </span>
              </li>
            )}
          </For>
        </ul>
        <p>{said().plateIsHotter}</p>
      </Show>
      <Show when={isBeyond()}>
        <p data-line="beyond">{said().beyond}</p>
      </Show>
      <p>{said().notReckoned}</p>
      <p class="soft">{words.general.estimate}</p>
    </div>
  );
}

const isSameList = (one: readonly string[], other: readonly string[]): boolean =>
  one.length === other.length && one.every((id, index) => id === other[index]);

/** One figure: its value in the line that opens it, then inputs, formula, source and mark. */
function OneFigure(props: { readonly figure: Explained; readonly isOpen: boolean }) {
  const words = useWords();
  return (
    <details class="explained" data-explained={props.figure.id} open={props.isOpen}>
      <summary>
        <span class="explained-line">
          <span>{props.figure.name}</span> <strong>{props.figure.value}</strong>
        </span>
      </summary>
      <dl>
        <Show when={props.figure.inputs.length > 0}>
          <dt>{words.hair.from}</dt>
          <For each={props.figure.inputs}>{(input) => <dd>{input}</dd>}</For>
        </Show>
        <dt>{words.hair.howSaid}</dt>
        <dd>{props.figure.how}</dd>
      </dl>
      <p class="soft" data-line="source">
        {props.figure.source}
      </p>
    </details>
  );
}
