import { createEffect, createMemo, Match, onCleanup, Show, Switch } from 'solid-js';
import type { RawForm } from '../../shared/records/readForm';
import type { Result } from '../../shared/result';
import { formatQuantity } from '../../shared/units/format';
import { Dialog, DialogHeadProvider } from '../parts/Dialog';
import { AboveActionsProvider } from '../parts/PageActions';
import { IsDemoProvider } from '../parts/useIsDemo';
import { MayWriteProvider } from '../parts/useMayWrite';
import { useWords } from '../parts/useWords';
import type { StationInUse } from '../station/createStation';
import type { DemoInUse } from '../station/demo/createDemo';
import type { SubmitRefusal } from '../station/submitRefusal';
import type { TabletInUse } from '../tablet/createTablet';
import { holdBack } from '../tablet/holdBack';
import { passOverDoubleTaps } from '../tablet/passOverDoubleTaps';
import { createAlarm } from './alarm/createAlarm';
import type { UnheardCall } from './alarm/listCalls';
import { Silence } from './alarm/Silence';
import { TabletHeard } from './alarm/TabletNote';
import './app.css';
import { Bar } from './bar/Bar';
import { sayWhose } from './bar/sayWhose';
import { WhoIsIt } from './bar/WhoIsIt';
import { ClientInView } from './ClientInView';
import { ClockDoubt } from './clockDoubt/ClockDoubt';
import { viewClockDoubt } from './clockDoubt/viewClockDoubt';
import { DueElsewhere, DueHeard } from './clocks/DueElsewhere';
import { isSameDue, listDue } from './clocks/listDue';
import { Day } from './day/Day';
import { EverybodyProvider } from './everybody';
import { RecordsKept } from './kept/RecordsKept';
import { dropDrafts } from './keptDraft';
import { Notices } from './notices/Notices';
import { isSameJumps, viewJumps } from './notices/viewJumps';
import { createPlace } from './place';
import { SettingsScreen } from './settings/SettingsScreen';
import { SkinTests } from './skinTest/SkinTests';
import { SkinTestsButton } from './skinTest/SkinTestsButton';
import { Start } from './start/Start';
import { makeSubmit, makeSubmitAll } from './submitting';
import { createWho } from './who';
import { DemoOffer, isUntouched } from './window/DemoOffer';
import { DemoRibbon } from './window/DemoRibbon';
import { WindowPart } from './window/WindowPart';

/** What this tablet shows: the bar, one client, the day, the settings; and over it who is there and what is to be told. */
export function Screens(props: {
  readonly station: StationInUse;
  readonly tablet?: TabletInUse | undefined;
  readonly demo?: DemoInUse | undefined;
}) {
  const words = useWords();
  const state = () => props.station.state();
  const settings = () => state().settings.settings;
  const isWriter = () => state().mode === 'writing';
  const writeChair = (chair: number) => formatQuantity(chair, 'count', settings().units, words.locale);
  const who = createWho(isWriter);
  const submit = makeSubmit(props.station, who, words.bar.nobodyChosen);
  const submitAll = makeSubmitAll(props.station, who);
  const sayCall = ({ consultation, clock, why }: UnheardCall): string | null =>
    settings().spoken ? words.alarm.spoken(writeChair(consultation.record.chair), why, clock.kind) : null;
  const alarm = createAlarm(props.station, props.tablet, submit, sayCall);
  /** Its own signal, so that no entry of anybody begins the language anew. */
  const language = createMemo(() => (settings().spoken ? words.locale : null));
  createEffect(() => props.tablet?.speakIn(language()));
  const place = createPlace(state, who, alarm.goTo);

  /** First what lies over the screen, then the screen; what was begun there stands there still. */
  const goBack = () => {
    const over = document.querySelector<HTMLDialogElement>('dialog:modal');
    if (over === null) place.toBar();
    else over.close();
  };
  onCleanup(holdBack(goBack));
  onCleanup(passOverDoubleTaps());

  createEffect<readonly string[]>((before) => {
    const { open } = state();
    for (const id of before) if (!open.has(id)) dropDrafts(id);
    return [...open.keys()];
  }, []);

  /** null: nobody said who she is, and nothing was asked of the station. */
  const correctClocks = () =>
    new Promise<Result<void, SubmitRefusal> | null>((resolve) => {
      who.asSomebody(
        () => void props.station.correctClocks(who.by()).then(resolve),
        () => resolve(null),
      );
    });
  const doubt = () =>
    isWriter() ? viewClockDoubt(state(), props.station.nowMs(), props.station.seenMs()) : null;
  const jumps = createMemo(() => (isWriter() ? viewJumps(state(), props.station.jumps()) : []), [], {
    equals: isSameJumps,
  });
  const chosenChair = () => {
    const chair = place.chair();
    return chair === null ? null : writeChair(chair);
  };

  const due = createMemo(
    () => listDue([...state().open.values()], place.here()?.id, props.station.nowMs()),
    [],
    { equals: isSameDue },
  );
  const renderDue = () => (
    <Show when={due().length > 0 || alarm.isCalling()}>
      <div class="above-line above-actions">
        {/* On the far side of what the hand is on its way to: a tap beside it writes nothing. */}
        <Silence alarm={alarm} />
        <DueElsewhere due={due()} units={settings().units} onOpen={place.toClient} />
      </div>
    </Show>
  );

  /** Whose consultation a notice is about, while she is open. */
  const whose = (id: string) => {
    const consultation = state().open.get(id);
    return consultation === undefined ? null : sayWhose(consultation, words, settings().units);
  };

  const everybody = createMemo(() => [...state().open.values()]);
  const renderClient = (id: string) => (
    <IsDemoProvider value={() => props.demo?.isHere === true}>
      <EverybodyProvider value={everybody}>
        <ClientInView
          id={id}
          station={props.station}
          who={who}
          submit={submit}
          submitAll={submitAll}
          onBar={place.toBar}
        />
      </EverybodyProvider>
    </IsDemoProvider>
  );

  return (
    <DialogHeadProvider value={() => <Silence alarm={alarm} />}>
      <div class="station">
        <Show when={props.demo?.isHere && props.demo}>{(demo) => <DemoRibbon demo={demo()} />}</Show>
        <WindowPart mode={state().mode} askTakeOver={props.station.askTakeOver} />
        <DueHeard due={due()} units={settings().units} />
        <TabletHeard tablet={props.tablet} />
        <AboveActionsProvider value={renderDue}>
          <div class="station-screen">
            <Switch
              fallback={
                <Bar
                  state={state()}
                  settings={settings()}
                  nowMs={props.station.nowMs()}
                  by={who.by()}
                  isWriter={isWriter()}
                  closed={place.endedHere()}
                  alarm={alarm}
                  tablet={props.tablet}
                  offer={
                    <Show when={isUntouched(state()) && !props.demo?.isHere && props.demo}>
                      {(demo) => <DemoOffer demo={demo()} />}
                    </Show>
                  }
                  onWho={who.ask}
                  onOpen={place.toClient}
                  onStart={place.toStart}
                  onDay={place.toDay}
                  onSettings={place.toSettings}
                  ways={
                    <SkinTestsButton
                      skinTests={state().skinTests}
                      settings={settings()}
                      nowMs={props.station.nowMs()}
                      onOpen={place.toSkinTests}
                    />
                  }
                />
              }
            >
              <Match when={doubt()}>
                {(found) => (
                  <ClockDoubt doubt={found()} nowMs={props.station.nowMs()} correct={correctClocks} />
                )}
              </Match>
              <Match when={place.at() === 'day'}>
                <Day
                  isDemo={props.demo?.isHere === true}
                  readSettings={props.station.readSettings}
                  state={state()}
                  nowMs={props.station.nowMs()}
                  onKept={place.toKept}
                  onBar={place.toBar}
                />
              </Match>
              <Match when={place.at() === 'kept'}>
                <MayWriteProvider value={isWriter}>
                  <RecordsKept station={props.station} who={who} onDay={place.toDay} onBar={place.toBar} />
                </MayWriteProvider>
              </Match>
              <Match when={place.at() === 'skinTests'}>
                <MayWriteProvider value={isWriter}>
                  <SkinTests station={props.station} who={who} onBar={place.toBar} />
                </MayWriteProvider>
              </Match>
              <Match when={place.at() === 'settings'}>
                <MayWriteProvider value={isWriter}>
                  <SettingsScreen
                    inForce={settings()}
                    nowMs={props.station.nowMs()}
                    save={(next) => props.station.saveSettings(who.by(), next)}
                    tablet={props.tablet}
                    backup={props.station}
                    onBar={place.toBar}
                  />
                </MayWriteProvider>
              </Match>
              <Match when={place.at() === 'start'}>
                <MayWriteProvider value={isWriter}>
                  <Start
                    settings={settings()}
                    nowMs={props.station.nowMs()}
                    clients={state().open}
                    chair={chosenChair()}
                    by={who.by()}
                    closed={state().closed}
                    open={(answers: RawForm) => props.station.open(who.by(), answers)}
                    onOpened={place.toClient}
                    onBar={place.toBar}
                  />
                </MayWriteProvider>
              </Match>
              <Match when={place.here()?.id} keyed>
                {renderClient}
              </Match>
            </Switch>
          </div>
        </AboveActionsProvider>
        <Notices
          notices={state().notices}
          units={settings().units}
          whose={whose}
          onDismiss={(notice) => props.station.dismiss(notice)}
          jumps={jumps()}
          onSlept={props.station.saySlept}
          onPutAhead={(jump) => who.asSomebody(() => void props.station.sayPutAhead(who.by(), jump))}
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
    </DialogHeadProvider>
  );
}
