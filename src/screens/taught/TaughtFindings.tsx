import { For, Show } from 'solid-js';
import { formatQuantity } from '../../../shared/units/format';
import type { UnitSettings } from '../../../shared/units/quantity';
import { useWords } from '../../parts/useWords';
import { SaidAndSeen } from './SaidAndSeen';
import type { Moved, SaidRow, TaughtView } from './viewTaught';

const ways: readonly Moved['way'][] = ['more', 'less'];

/** How many strands taught, whether what is said of them comes, and what weighs otherwise than was assumed. */
export function TaughtFindings(props: {
  readonly view: TaughtView;
  /** Is it what the shown chance goes by? */
  readonly learns: boolean;
  readonly units: UnitSettings;
}) {
  const words = useWords();
  const said = () => words.taught;
  const write = (count: number) => formatQuantity(count, 'count', props.units, words.locale);
  const percent = (share: number) =>
    formatQuantity(Math.round(share * 100), 'percent', props.units, words.locale);
  const sayRow = ({ from, to, seen, fits }: SaidRow) => ({
    said: said().range(write(Math.round(from * 100)), percent(to)),
    seen: said().seen(write(seen.count), write(seen.of), fits),
  });
  const sayAll = () =>
    props.view.rows
      .map(sayRow)
      .map((row) => said().rowInWords(row.said, row.seen))
      .join(' ');
  const sayGain = (gain: number) => (Math.round(gain * 100) > 0 ? percent(gain) : null);
  const listHair = (way: Moved['way']) =>
    props.view.moved.filter((moved) => moved.way === way).map(({ name }) => said().hair[name]);
  return (
    <div class="columns">
      <section class="panel taught-panel" data-panel="taught">
        <h2 class="big-word" data-strands={props.view.strands}>
          {said().count(write(props.view.strands))}
        </h2>
        <p>{said().broke(write(props.view.broken.count), write(props.view.broken.of))}</p>
        <Show when={props.view.isEnough} fallback={<p data-too-few>{said().tooFew}</p>}>
          <Show when={props.view.gain} fallback={<p data-gain="none">{said().nothingToCompare}</p>}>
            {(gain) => (
              <p data-gain="some">{said().foreseen(sayGain(gain().learnt), sayGain(gain().assumed))}</p>
            )}
          </Show>
          <For each={ways}>
            {(way) => (
              <Show when={listHair(way).length > 0}>
                <p data-moved={way}>{said().moved[way](listHair(way))}</p>
              </Show>
            )}
          </For>
          <Show when={props.view.moved.length === 0}>
            <p data-moved="none">{said().nothingMoved}</p>
          </Show>
        </Show>
        <p class="soft">{props.learns ? said().shownOnly : said().isOff}</p>
      </section>
      <section class="panel taught-panel" data-panel="said-seen">
        <h2>{props.learns ? said().saidAndSeen : said().assumedAndSeen}</h2>
        <SaidAndSeen
          rows={props.view.rows}
          say={sayRow}
          ticks={[0, 0.5, 1].map((share) => ({ share, name: percent(share) }))}
          label={sayAll()}
        />
        <p class="soft">{said().legend}</p>
      </section>
    </div>
  );
}
