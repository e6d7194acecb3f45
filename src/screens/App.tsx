import { createEffect, createMemo, createSignal, Match, Show, Switch } from 'solid-js';
import type { Consultation } from '../../machines/consultation/consultation';
import type { RawForm } from '../../shared/records/readForm';
import { formatQuantity } from '../../shared/units/format';
import { Dialog } from '../parts/Dialog';
import { useWords, WordsProvider } from '../parts/useWords';
import type { StationInUse } from '../station/createStation';
import { findWords } from '../words/words';
import './app.css';
import { Bar } from './bar/Bar';
import { viewBar } from './bar/viewBar';
import { WhoIsIt } from './bar/WhoIsIt';
import { ClockDoubt } from './clockDoubt/ClockDoubt';
import { viewClockDoubt } from './clockDoubt/viewClockDoubt';
import { ConsultationScreen } from './consultation/ConsultationScreen';
import { Day } from './day/Day';
import { dropDrafts } from './keptDraft';
import { Notices } from './notices/Notices';
import { SettingsScreen } from './settings/SettingsScreen';
import { Start } from './start/Start';
import { makeSubmit } from './submitting';
import { isUnderWay } from './urgent';
import { createWho } from './who';
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
  const state = () => props.station.state();
  const settings = () => state().settings.settings;
  const isWriter = () => state().mode === 'writing';
  const who = createWho(isWriter);

  const correctClocks = () =>
    new Promise<void>((resolve) => {
      who.asSomebody(() => void props.station.correctClocks(who.by()).then(() => resolve()), resolve);
    });
  const doubt = () =>
    isWriter() ? viewClockDoubt(state(), props.station.nowMs(), props.station.seenMs()) : null;
  const submit = makeSubmit(props.station, who, words.bar.nobodyChosen);
  createEffect<readonly string[]>((before) => {
    const open = state().open;
    for (const id of before) if (!open.has(id)) dropDrafts(id);
    return [...open.keys()];
  }, []);
  const openClient = (id: string) => {
    const open = () => setPlace({ at: 'consultation', id });
    const consultation = state().open.get(id);
    if (consultation !== undefined && isUnderWay(consultation)) open();
    else who.asSomebody(open);
  };
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
              by={who.by()}
              isWriter={isWriter()}
              closed={endedHere()}
              onWho={who.ask}
              onOpen={openClient}
              onStart={(chair) =>
                who.asSomebody(() =>
                  setPlace({ at: 'start', chair: chair === null ? null : writeChair(chair) }),
                )
              }
              onDay={() => setPlace({ at: 'day' })}
              onSettings={() => who.asSomebody(() => setPlace({ at: 'settings' }))}
            />
          }
        >
          <Match when={doubt()}>
            {(found) => <ClockDoubt doubt={found()} nowMs={props.station.nowMs()} correct={correctClocks} />}
          </Match>
          <Match when={place().at === 'day'}>
            <Day state={state()} nowMs={props.station.nowMs()} onBar={() => setPlace(bar)} />
          </Match>
          <Match when={place().at === 'settings'}>
            <SettingsScreen
              inForce={settings()}
              nowMs={props.station.nowMs()}
              save={(next) => props.station.saveSettings(who.by(), next)}
              onBar={() => setPlace(bar)}
            />
          </Match>
          <Match when={place().at === 'start'}>
            <Start
              settings={settings()}
              nowMs={props.station.nowMs()}
              freeChairs={freeChairs()}
              chair={chosenChair()}
              open={(answers: RawForm) => props.station.open(who.by(), answers)}
              onOpened={openClient}
              onBar={() => setPlace(bar)}
            />
          </Match>
          <Match when={here()?.id} keyed>
            {(id) => {
              // What is still on its way when she is closed reads her as she was last.
              const last = createMemo<Consultation | undefined>((before) => state().open.get(id) ?? before);
              return (
                <Show when={last()}>
                  {(consultation) => (
                    <ConsultationScreen
                      consultation={consultation()}
                      settings={settings()}
                      nowMs={props.station.nowMs()}
                      by={who.by()}
                      isWriter={isWriter()}
                      submit={(raw, name) => submit(id, raw, name)}
                      finishClosing={() => props.station.finishClosing(id)}
                      onWho={who.ask}
                      onBar={() => setPlace(bar)}
                    />
                  )}
                </Show>
              );
            }}
          </Match>
        </Switch>
      </div>
      <Notices
        notices={state().notices}
        units={settings().units}
        onDismiss={(notice) => props.station.dismiss(notice)}
      />
      <Dialog isOpen={who.isAsked()} title={words.bar.who} onClose={who.chooseNobody}>
        <WhoIsIt
          settings={settings()}
          nowMs={props.station.nowMs()}
          by={who.by()}
          onChoose={who.choose}
          saveSettings={props.station.saveSettings}
        />
      </Dialog>
    </div>
  );
}
