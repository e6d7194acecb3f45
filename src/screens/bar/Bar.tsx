import { createMemo, createSignal, For, Show } from 'solid-js';
import type { ClosedRecord } from '../../../shared/records/closedRecord';
import type { Settings } from '../../../shared/records/settings';
import { formatQuantity } from '../../../shared/units/format';
import { BigButton } from '../../parts/BigButton';
import { Dialog } from '../../parts/Dialog';
import { useWords } from '../../parts/useWords';
import type { StationState } from '../../station/stationState';
import './bar.css';
import { Ended } from './Ended';
import { ParkedList } from './ParkedList';
import { PlaceButton } from './PlaceButton';
import { Strip } from './Strip';
import { viewBar } from './viewBar';

/** The bar: the strip of what is due next, and everybody at her place, in the order of the chairs. */
export function Bar(props: {
  readonly state: StationState;
  readonly settings: Settings;
  readonly nowMs: number;
  readonly by: string;
  /** Only a window that writes starts anybody, or is somebody. */
  readonly isWriter: boolean;
  /** The client who was in view, just closed. */
  readonly closed: ClosedRecord | undefined;
  readonly onWho: () => void;
  readonly onOpen: (id: string) => void;
  readonly onStart: (chair: number | null) => void;
  readonly onDay: () => void;
  readonly onSettings: () => void;
}) {
  const words = useWords();
  const [isParkedOpen, setIsParkedOpen] = createSignal(false);
  const view = createMemo(() => viewBar([...props.state.open.values()], props.settings.chairs, props.nowMs));
  const write = (count: number) => formatQuantity(count, 'count', props.settings.units, words.locale);
  const away = () => view().parked.length + view().waiting.length;

  return (
    <main class="bar">
      <header class="bar-head">
        <h1 class={props.closed === undefined ? '' : 'only-heard'}>{words.bar.title}</h1>
        <Ended closed={props.closed} />
        <nav class="bar-ways">
          <Show when={props.isWriter}>
            <BigButton kind={props.by === '' ? 'attention' : 'quiet'} act="who" onPress={() => props.onWho()}>
              {props.by === '' ? words.bar.tapYourName : props.by}
            </BigButton>
          </Show>
          <BigButton kind="quiet" act="parked" onPress={() => setIsParkedOpen(true)}>
            {words.bar.parked(write(away()))}
          </BigButton>
          <BigButton kind="quiet" act="day" onPress={() => props.onDay()}>
            {words.bar.day}
          </BigButton>
          <Show when={props.isWriter}>
            <BigButton kind="quiet" act="settings" onPress={() => props.onSettings()}>
              {words.bar.settings}
            </BigButton>
            <BigButton kind="primary" act="start" onPress={() => props.onStart(null)}>
              {words.bar.start}
            </BigButton>
          </Show>
        </nav>
      </header>
      <Strip
        running={view().clocks[0]}
        nowMs={props.nowMs}
        units={props.settings.units}
        onOpen={(id) => props.onOpen(id)}
      />
      {/* Until the records are read nobody knows which places are free. */}
      <Show when={props.state.mode !== 'starting'}>
        <ul class="places">
          <For each={view().places.map(({ chair }) => chair)}>
            {(chair) => {
              const here = () => view().places.find((place) => place.chair === chair)?.consultation ?? null;
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
      </Show>
      <Dialog isOpen={isParkedOpen()} title={words.bar.parkedTitle} onClose={() => setIsParkedOpen(false)}>
        <ParkedList view={view()} units={props.settings.units} onOpen={(id) => props.onOpen(id)} />
      </Dialog>
    </main>
  );
}
