import { createMemo, For, Show } from 'solid-js';
import { formatQuantity } from '../../../shared/units/format';
import { BigButton } from '../../parts/BigButton';
import { createPages } from '../../parts/createPages';
import { PlainPage } from '../../parts/PlainPage';
import { useWords } from '../../parts/useWords';
import type { StationState } from '../../station/stationState';
import { type KeptThing, viewThing } from './viewKept';

/** What goes, a row each; a tap lets it stay. */
export function PickThings(props: {
  readonly state: StationState;
  readonly title: string;
  readonly hint: string;
  readonly things: readonly KeptThing[];
  /** Ids of what is left where it is. */
  readonly staying: ReadonlySet<string>;
  readonly onStaying: (staying: ReadonlySet<string>) => void;
  readonly onBack: () => void;
  readonly onGoOn: () => void;
}) {
  const words = useWords();
  const said = () => words.kept;
  const write = (count: number) =>
    formatQuantity(count, 'count', props.state.settings.settings.units, words.locale);
  const { shown, page, pages, turn: turnPage } = createPages(() => props.things);
  const rows = createMemo(() => shown().map((thing) => viewThing(thing, props.state, words)));
  const going = () => props.things.filter(({ id }) => !props.staying.has(id)).length;
  const turn = (id: string) => {
    const staying = new Set(props.staying);
    if (!staying.delete(id)) staying.add(id);
    props.onStaying(staying);
  };
  return (
    <PlainPage
      step="kept"
      kicker={said().title}
      title={props.title}
      actions={
        <>
          <BigButton act="kept-back" isWay onPress={props.onBack}>
            {words.general.back}
          </BigButton>
          <Show when={pages() > 1}>
            <BigButton act="more-kept" isWay onPress={turnPage}>
              {said().page(write(page()), write(pages()))}
            </BigButton>
          </Show>
          <BigButton kind="primary" act="kept-go-on" isDisabled={going() === 0} onPress={props.onGoOn}>
            {going() === 0 ? said().nothingPicked : said().goOn(write(going()))}
          </BigButton>
        </>
      }
    >
      <p class="lead">{props.hint}</p>
      <ul class="kept-rows">
        <For each={rows()}>
          {(row) => (
            <li>
              <button
                type="button"
                class="kept-row"
                data-kept={row.id}
                aria-pressed={!props.staying.has(row.id)}
                onClick={() => turn(row.id)}
              >
                <span class="kept-what">
                  <strong>{row.ticket}</strong>
                  <span>{row.title}</span>
                  <span class="kept-rest">
                    {row.rest}
                    <Show when={row.hasStop}>
                      {' · '}
                      <em class="kept-stop">{said().stop}</em>
                    </Show>
                  </span>
                </span>
                <span class="kept-goes">{props.staying.has(row.id) ? said().staysHere : said().goes}</span>
              </button>
            </li>
          )}
        </For>
      </ul>
    </PlainPage>
  );
}
