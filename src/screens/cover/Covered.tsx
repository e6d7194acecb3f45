import { createMemo, For, Show } from 'solid-js';
import type { Settings } from '../../../shared/records/settings';
import { formatQuantity } from '../../../shared/units/format';
import { useWords } from '../../parts/useWords';
import type { StationState } from '../../station/stationState';
import '../bar/bar.css';
import { Strip } from '../bar/Strip';
import { sayBarDue } from '../bar/sayBarDue';
import { type CoveredPlace, viewCover } from './viewCover';

/** What stays under the cover: what is due next, each chair with its clock; no ticket. */
export function Covered(props: {
  readonly state: Pick<StationState, 'open'>;
  readonly settings: Settings;
  readonly nowMs: number;
  /** A chair was tapped: whoever sits there is opened. */
  readonly onOpen: (id: string) => void;
}) {
  const words = useWords();
  const view = createMemo(() =>
    viewCover([...props.state.open.values()], props.settings.chairs, props.nowMs),
  );
  const write = (count: number) => formatQuantity(count, 'count', props.settings.units, words.locale);
  const sayDue = ({ due }: CoveredPlace) =>
    due === null ? null : sayBarDue(due, props.nowMs, words, props.settings.units);
  return (
    <>
      <Show
        when={view().first}
        fallback={
          <div class="strip strip-quiet">
            <p>{words.bar.nothingRuns}</p>
          </div>
        }
      >
        {(first) => (
          <Strip
            due={first()}
            whose={words.cover.chair(write(first().consultation.record.chair))}
            nowMs={props.nowMs}
            units={props.settings.units}
            onOpen={props.onOpen}
          />
        )}
      </Show>
      <ul class="places" data-rows={Math.ceil(view().places.length / 2)}>
        <For each={view().places.map(({ chair }) => chair)}>
          {(chair) => {
            const here = () => view().places.find((place) => place.chair === chair);
            return (
              <li>
                <Show when={here()}>
                  {(place) => (
                    <CoveredChair
                      chair={words.cover.chair(write(chair))}
                      place={place()}
                      said={sayDue(place())}
                      more={place().more === 0 ? '' : words.bar.moreClocks(write(place().more))}
                      onOpen={props.onOpen}
                    />
                  )}
                </Show>
              </li>
            );
          }}
        </For>
      </ul>
      <Show when={view().beyond.length > 0}>
        <p class="cover-beyond">
          {view()
            .beyond.map((place) => {
              const said = sayDue(place);
              return `${words.cover.chair(write(place.chair))}: ${said?.name} ${said?.says} ${said?.digits}`;
            })
            .join(' · ')}
        </p>
      </Show>
    </>
  );
}

function CoveredChair(props: {
  readonly chair: string;
  readonly place: CoveredPlace;
  readonly said: ReturnType<typeof sayBarDue> | null;
  readonly more: string;
  readonly onOpen: (id: string) => void;
}) {
  const words = useWords();
  return (
    <Show when={props.place.id} fallback={<p class="place place-free">{words.cover.free(props.chair)}</p>}>
      {(id) => (
        <button
          type="button"
          class="place"
          data-act="open-covered"
          data-covered-chair={props.place.chair}
          onClick={() => props.onOpen(id())}
        >
          <span class="place-who">
            <span class="place-ticket">{props.chair}</span>
            <span class="place-step">{props.more}</span>
          </span>
          <span class="place-now" data-tone={props.said?.tone ?? 'idle'}>
            <Show when={props.said} fallback={<span class="place-says">{words.cover.noClock}</span>}>
              {(said) => (
                <>
                  <span class="place-what">{said().name}</span>
                  <span class="place-says">{said().says}</span>
                  <span class="place-digits">{said().digits}</span>
                </>
              )}
            </Show>
          </span>
        </button>
      )}
    </Show>
  );
}
