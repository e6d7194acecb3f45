import { createSignal, Match, Show, Switch } from 'solid-js';
import type { RawForm } from '../../shared/records/readForm';
import { formatQuantity } from '../../shared/units/format';
import { Dialog } from '../parts/Dialog';
import { useWords, WordsProvider } from '../parts/useWords';
import type { StationInUse } from '../station/createStation';
import { findWords } from '../words/words';
import './app.css';
import { Bar } from './bar/Bar';
import { Ended } from './bar/Ended';
import { viewBar } from './bar/viewBar';
import { Who } from './bar/Who';
import { ConsultationScreen } from './consultation/ConsultationScreen';
import { Notices } from './notices/Notices';
import { Start } from './start/Start';
import type { Submit } from './stepProps';
import { WindowPart } from './window/WindowPart';

/** Where this tablet is. In memory only: no address shows a client, and every start begins at the bar. */
type Place =
  | { readonly at: 'bar' | 'day' | 'settings' }
  | { readonly at: 'start'; readonly chair: string | null }
  | { readonly at: 'consultation'; readonly id: string };

const bar: Place = { at: 'bar' };

/** The station on this tablet, in the language of its settings. */
export function App(props: { readonly station: StationInUse }) {
  const locale = () => props.station.state().settings.settings.locale;
  return (
    <Show when={locale()} keyed>
      {(spoken) => (
        <WordsProvider value={findWords(spoken)}>
          <Screens station={props.station} />
        </WordsProvider>
      )}
    </Show>
  );
}

function Screens(props: { readonly station: StationInUse }) {
  const words = useWords();
  const [place, setPlace] = createSignal<Place>(bar);
  const [by, setBy] = createSignal('');
  /** What waits until somebody has said who she is. */
  const [pending, setPending] = createSignal<(() => void) | null>(null);
  const state = () => props.station.state();
  const settings = () => state().settings.settings;
  const isWriter = () => state().mode === 'writing';

  const asSomebody = (then: () => void): void => {
    if (by() === '' && isWriter()) setPending(() => then);
    else then();
  };
  const choose = (name: string): void => {
    setBy(name);
    const then = pending();
    setPending(null);
    then?.();
  };
  const openClient = (id: string) => asSomebody(() => setPlace({ at: 'consultation', id }));
  const here = () => {
    const now = place();
    return now.at === 'consultation' ? state().open.get(now.id) : undefined;
  };
  /** The client in view has just been closed: that is said, and the bar is shown. */
  const endedHere = () => {
    const now = place();
    return now.at === 'consultation' ? state().closed.find(({ id }) => id === now.id) : undefined;
  };
  const chosenChair = () => {
    const now = place();
    return now.at === 'start' ? now.chair : null;
  };
  const writeChair = (chair: number) => formatQuantity(chair, 'count', settings().units, words.locale);
  const freeChairs = () =>
    viewBar([...state().open.values()], settings().chairs, props.station.nowMs())
      .places.filter(({ consultation }) => consultation === null)
      .map(({ chair }) => writeChair(chair));

  return (
    <div class="station">
      <WindowPart mode={state().mode} askTakeOver={props.station.askTakeOver} />
      <div class="station-screen">
        <Switch
          fallback={
            <Bar
              state={state()}
              settings={settings()}
              nowMs={props.station.nowMs()}
              by={by()}
              onWho={() => setPending(() => () => undefined)}
              onOpen={openClient}
              onStart={(chair) =>
                asSomebody(() => setPlace({ at: 'start', chair: chair === null ? null : writeChair(chair) }))
              }
              onDay={() => setPlace({ at: 'day' })}
              onSettings={() => setPlace({ at: 'settings' })}
            />
          }
        >
          <Match when={place().at === 'start'}>
            <Start
              settings={settings()}
              nowMs={props.station.nowMs()}
              freeChairs={freeChairs()}
              chair={chosenChair()}
              open={(answers: RawForm) => props.station.open(by(), answers)}
              onOpened={openClient}
              onBar={() => setPlace(bar)}
            />
          </Match>
          <Match when={here()}>
            {(consultation) => (
              <Show when={consultation().id} keyed>
                {(id) => (
                  <ConsultationScreen
                    consultation={consultation()}
                    settings={settings()}
                    nowMs={props.station.nowMs()}
                    by={by()}
                    isWriter={isWriter()}
                    submit={((raw, name) => props.station.submit(id, name ?? by(), raw)) satisfies Submit}
                    onWho={() => setPending(() => () => undefined)}
                    onBar={() => setPlace(bar)}
                  />
                )}
              </Show>
            )}
          </Match>
        </Switch>
      </div>
      <Ended closed={endedHere()} />
      <Notices
        notices={state().notices}
        units={settings().units}
        onDismiss={(notice) => props.station.dismiss(notice)}
      />
      <Dialog isOpen={pending() !== null} title={words.bar.who} onClose={() => setPending(null)}>
        <Who
          settings={settings()}
          nowMs={props.station.nowMs()}
          by={by()}
          onChoose={choose}
          saveSettings={props.station.saveSettings}
        />
      </Dialog>
    </div>
  );
}
