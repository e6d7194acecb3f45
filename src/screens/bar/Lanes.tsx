import { For, Show } from 'solid-js';
import type { Settings } from '../../../shared/records/settings';
import { formatQuantity } from '../../../shared/units/format';
import { useWords } from '../../parts/useWords';
import { PlaceButton } from './PlaceButton';
import type { BarView } from './viewBar';

/** The lanes in the order of the chairs: a place never moves, whoever comes or goes. */
export function Lanes(props: {
  readonly places: BarView['places'];
  readonly settings: Settings;
  readonly nowMs: number;
  readonly isWriter: boolean;
  readonly onOpen: (id: string) => void;
  readonly onStart: (chair: number) => void;
}) {
  const words = useWords();
  const write = (count: number) => formatQuantity(count, 'count', props.settings.units, words.locale);
  return (
    <ul class="places" data-rows={Math.ceil(props.places.length / 2)}>
      <For each={props.places.map(({ chair }) => chair)}>
        {(chair) => {
          const here = () => props.places.find((place) => place.chair === chair)?.consultation ?? null;
          return (
            <li>
              <Show
                when={here()}
                fallback={
                  <button
                    type="button"
                    class="place place-free"
                    data-chair={chair}
                    data-act="start-here"
                    disabled={!props.isWriter}
                    onClick={() => props.onStart(chair)}
                  >
                    {words.bar.free(write(chair))}
                  </button>
                }
              >
                {(consultation) => (
                  <PlaceButton
                    consultation={consultation()}
                    settings={props.settings}
                    nowMs={props.nowMs}
                    onOpen={(id) => props.onOpen(id)}
                  />
                )}
              </Show>
            </li>
          );
        }}
      </For>
    </ul>
  );
}
