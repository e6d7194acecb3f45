import { createEffect, createMemo, Match, onCleanup, Show, Switch } from 'solid-js';
import type { RawForm } from '../../shared/records/readForm';
import type { Settings } from '../../shared/records/settings';
import type { Result } from '../../shared/result';
import { formatQuantity } from '../../shared/units/format';
import { Dialog, DialogHeadProvider } from '../parts/Dialog';
import { AboveActionsProvider } from '../parts/PageActions';
import { type Invented, InventedProvider } from '../parts/useInvented';
import { MayWriteProvider } from '../parts/useMayWrite';
import { useWords } from '../parts/useWords';
import type { StationInUse } from '../station/createStation';
import type { DemoInUse } from '../station/demo/createDemo';
import type { PracticeInUse } from '../station/practice/createPractice';
import { isPastRead } from '../station/stationState';
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
import { Covered } from './cover/Covered';
import { createIdle } from './cover/createIdle';
import { IdleOver } from './cover/IdleOver';
import { Day } from './day/Day';
import { Diagnosis } from './diagnosis/Diagnosis';
import { useTabletFacts } from './diagnosis/diagnosisInUse';
import { EverybodyProvider } from './everybody';
import { RecordsKept } from './kept/RecordsKept';
import { dropDrafts } from './keptDraft';
import { Notices } from './notices/Notices';
import { isSameJumps, viewJumps } from './notices/viewJumps';
import { PinAsked } from './pin/PinAsked';
import { createPinGate, PassProvider, usePin } from './pin/pinInUse';
import { createPlace } from './place';
import { BenchDueButton } from './practice/bench/BenchDueButton';
import { BenchTrials } from './practice/bench/BenchTrials';
import { createLessons } from './practice/createLessons';
import { DebriefPage } from './practice/DebriefPage';
import { Lessons } from './practice/Lessons';
import { LessonProvider } from './practice/lessonInUse';
import { PassedOverDialog } from './practice/PassedOverDialog';
import { PracticeMark, PracticeRibbon } from './practice/PracticeRibbon';
import { PressPage } from './practice/press/PressPage';
import { useLessonSaying } from './practice/sayingLesson';
import type { SittingKept } from './practice/sittings';
import { Trainer } from './practice/Trainer';
import { findNotNow } from './practice/whyNotPractise';
import { SettingsScreen } from './settings/SettingsScreen';
import { SkinTests } from './skinTest/SkinTests';
import { SkinTestsButton } from './skinTest/SkinTestsButton';
import { Start } from './start/Start';
import { makeSubmit, makeSubmitAll } from './submitting';
import { WhatTaught } from './taught/WhatTaught';
import { isQuiet } from './update/isQuiet';
import { UpdateLine } from './update/UpdateLine';
import { useUpdates } from './update/updatesInUse';
import { createWho, goAsSomebody } from './who';
import { DemoOffer, isUntouched } from './window/DemoOffer';
import { DemoRibbon } from './window/DemoRibbon';
import { LanguageOffer } from './window/LanguageOffer';
import { OncePastIsRead } from './window/StillReading';
import { WindowPart } from './window/WindowPart';

/** What this tablet shows: the bar, one client, the day, the settings; and over it who is there and what is to be told. */
export function Screens(props: {
  readonly station: StationInUse;
  readonly tablet?: TabletInUse | undefined;
  readonly demo?: DemoInUse | undefined;
  readonly practice?: PracticeInUse | undefined;
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
  const isPractice = props.practice?.isOn === true;
  const invented = (): Invented => {
    if (isPractice) return 'practice';
    return props.demo?.isHere === true ? 'demo' : null;
  };
  const pin = usePin();
  const gate = createPinGate(pin);
  const place = createPlace(state, who, alarm.goTo, isPractice ? 'lessons' : 'bar', gate.pass);
  const lessons = createLessons(props.station, who, () => props.practice?.school() ?? null, isPractice);
  const sitting = () => lessons.sittings().find(({ id }) => id === place.debriefOf());
  const sayInLesson = useLessonSaying();
  const sayLesson = () => {
    const now = lessons.underWay();
    if (now === null) return '';
    const how = now.sat.isExam ? words.practice.exam : words.practice.hints;
    return words.practice.underWay(sayInLesson(now.lesson?.title ?? now.sat.lessonId), how);
  };
  const undoing = () => {
    const { id, by } = state().settings;
    return id === 0
      ? undefined
      : {
          before: props.station.readSettings()(id - 1),
          by,
          run: () => props.station.undoSettings(who.by()),
        };
  };
  const facts = useTabletFacts();
  const drawDiagnosis = () =>
    facts === undefined
      ? undefined
      : () => (
          <Diagnosis station={props.station} tablet={props.tablet} facts={facts} units={settings().units} />
        );
  const byOrNobody = () => who.by() || words.bar.nobodyChosen;
  /** Before anybody has a name here: it is the first thing that is asked of a new station. */
  const speak = (locale: Settings['locale']) =>
    props.station.saveSettings(byOrNobody(), { ...settings(), locale });
  const enteringPractice = () => {
    const practice = props.practice;
    if (practice === undefined || practice.isOn || props.demo?.isHere === true) return undefined;
    return {
      notNow: () => findNotNow(state(), props.station.nowMs()),
      enter: () => practice.enter(who.by(), settings()),
    };
  };
  /** The same lesson once more, the same way; where another is under way, it is not offered. */
  const findAgain = ({ lesson, sat }: SittingKept) =>
    lesson === null || lessons.underWay() !== null
      ? undefined
      : () =>
          who.asSomebody(async () => {
            const begun = await lessons.begin(lesson, sat.isExam);
            if (begun.ok) place.toClient(begun.value);
          });
  const leavePractice = async () => {
    // While nobody is there its clock does not run away.
    if (isWriter()) await props.station.setSpeed(byOrNobody(), 1);
    return (await props.practice?.leave()) === true;
  };

  /** Her steps of first aid are read while hands rinse; what is invented tells of nobody. */
  const idle = createIdle(props.station.nowMs, () => ({
    coverAfterMin: invented() === null ? settings().coverAfterMin : null,
    isBeingRead:
      place.at() === 'consultation' && (place.here()?.state.context.facts.care ?? 'calm') !== 'calm',
  }));

  // Whoever comes to the bar, or to a covered tablet, is another person.
  createEffect(() => {
    if (idle.phase() === 'covered' && place.isGuarded() && pin?.isSet() === true) place.toBar();
    if (idle.phase() === 'covered') gate.giveUp();
    const isAtBar = ['bar', 'lessons'].includes(place.at()) || place.endedHere() !== undefined;
    if (idle.phase() === 'covered' || isAtBar) gate.close();
  });

  /** First what lies over the screen, then the screen; what was begun there stands there still. */
  const goBack = () => {
    if (idle.phase() !== 'awake') return idle.stay();
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
    goAsSomebody<Result<void, SubmitRefusal> | null>(
      who,
      () => props.station.correctClocks(who.by()),
      () => null,
    );
  const doubt = () =>
    isWriter() ? viewClockDoubt(state(), props.station.nowMs(), props.station.seenMs()) : null;
  const jumps = createMemo(() => (isWriter() ? viewJumps(state(), props.station.jumps()) : []), [], {
    equals: isSameJumps,
  });
  /** A newer build is taken where nothing is under way: at the bar of the salon itself, with nobody there. */
  const isInUse = createMemo(
    () =>
      (place.at() !== 'bar' && place.endedHere() === undefined) ||
      invented() !== null ||
      who.isAsked() ||
      !isQuiet(state(), props.station.nowMs()),
  );
  const updates = useUpdates();
  updates?.useWhile(isInUse);
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
    <InventedProvider value={invented}>
      <LessonProvider value={() => (lessons.underWay()?.id === id ? lessons.here() : null)}>
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
      </LessonProvider>
    </InventedProvider>
  );

  return (
    <DialogHeadProvider
      value={() => (
        <>
          <PracticeMark isOn={isPractice} />
          <Silence alarm={alarm} />
        </>
      )}
    >
      <div
        class="station"
        data-past={isPastRead(state()) ? 'read' : 'reading'}
        data-in-practice={isPractice ? '' : undefined}
      >
        <Show when={isPractice}>
          <PracticeRibbon
            lesson={sayLesson()}
            speed={state().practice?.changes.at(-1)?.times ?? 1}
            mayWrite={isWriter()}
            onSpeed={(times) => void props.station.setSpeed(byOrNobody(), times)}
            onLeave={leavePractice}
          />
        </Show>
        <Show when={props.demo?.isHere && props.demo}>{(demo) => <DemoRibbon demo={demo()} />}</Show>
        <WindowPart mode={state().mode} askTakeOver={props.station.askTakeOver} />
        <DueHeard due={due()} units={settings().units} />
        <TabletHeard tablet={props.tablet} />
        <AboveActionsProvider value={renderDue}>
          <PassProvider value={gate.pass}>
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
                      <UpdateLine updates={isInUse() ? undefined : updates}>
                        <Show when={isUntouched(state()) && !isPractice && props.demo?.isHere !== true}>
                          <LanguageOffer onSpeak={(locale) => void speak(locale)} />
                          <Show when={props.demo}>{(demo) => <DemoOffer demo={demo()} />}</Show>
                        </Show>
                      </UpdateLine>
                    }
                    onWho={who.ask}
                    onOpen={place.toClient}
                    onStart={isPractice ? place.toLessons : place.toStart}
                    start={isPractice ? words.practice.lessons : undefined}
                    onDay={isPractice ? undefined : place.toDay}
                    onSettings={isPractice ? undefined : place.toSettings}
                    ways={
                      <>
                        <BenchDueButton
                          bench={state().bench}
                          settings={settings()}
                          nowMs={props.station.nowMs()}
                          onOpen={place.toBench}
                        />
                        <SkinTestsButton
                          skinTests={state().skinTests}
                          settings={settings()}
                          nowMs={props.station.nowMs()}
                          onOpen={place.toSkinTests}
                        />
                      </>
                    }
                  />
                }
              >
                <Match when={doubt()}>
                  {(found) => (
                    <ClockDoubt doubt={found()} nowMs={props.station.nowMs()} correct={correctClocks} />
                  )}
                </Match>
                <Match when={isPractice && place.at() === 'lessons'}>
                  <MayWriteProvider value={isWriter}>
                    <Lessons
                      station={props.station}
                      who={who}
                      all={lessons.all()}
                      lessons={lessons}
                      onOpen={place.toClient}
                      onDebrief={place.toDebrief}
                      onPressPage={place.toPress}
                      onTrainer={place.toTrainer}
                      onBench={place.toBench}
                      onBar={place.toBar}
                    />
                  </MayWriteProvider>
                </Match>
                <Match when={isPractice && place.at() === 'trainer'}>
                  <MayWriteProvider value={isWriter}>
                    <OncePastIsRead months={state().months} title={words.trainer.title} onBar={place.toBar}>
                      <Trainer
                        station={props.station}
                        lessons={lessons}
                        who={who}
                        school={props.practice?.school() ?? null}
                        onDebrief={place.toDebrief}
                        onLessons={place.toLessons}
                      />
                    </OncePastIsRead>
                  </MayWriteProvider>
                </Match>
                <Match when={isPractice && sitting()}>
                  {(sat) => (
                    <MayWriteProvider value={isWriter}>
                      <DebriefPage
                        sitting={sat()}
                        tell={lessons.tell}
                        station={props.station}
                        onAgain={findAgain(sat())}
                        onLessons={place.toLessons}
                      />
                    </MayWriteProvider>
                  )}
                </Match>
                <Match when={place.at() === 'day'}>
                  <OncePastIsRead months={state().months} title={words.day.title} onBar={place.toBar}>
                    <Day
                      isDemo={props.demo?.isHere === true}
                      readSettings={props.station.readSettings}
                      state={state()}
                      nowMs={props.station.nowMs()}
                      onKept={place.toKept}
                      onTaught={place.toTaught}
                      onPressPage={place.toPress}
                      onBench={place.toBench}
                      onBar={place.toBar}
                    />
                  </OncePastIsRead>
                </Match>
                <Match when={place.at() === 'kept'}>
                  <MayWriteProvider value={isWriter}>
                    <OncePastIsRead months={state().months} title={words.kept.title} onBar={place.toBar}>
                      <RecordsKept
                        station={props.station}
                        who={who}
                        onDay={place.toDay}
                        onBar={place.toBar}
                      />
                    </OncePastIsRead>
                  </MayWriteProvider>
                </Match>
                <Match when={place.at() === 'taught'}>
                  <MayWriteProvider value={isWriter}>
                    <OncePastIsRead months={state().months} title={words.taught.title} onBar={place.toBar}>
                      <WhatTaught station={props.station} who={who} onDay={place.toDay} onBar={place.toBar} />
                    </OncePastIsRead>
                  </MayWriteProvider>
                </Match>
                <Match when={place.at() === 'bench'}>
                  <MayWriteProvider value={isWriter}>
                    <BenchTrials
                      station={props.station}
                      who={who}
                      onWarmthTrial={isPractice ? undefined : place.toSettings}
                      onBack={isPractice ? place.toLessons : place.toDay}
                    />
                  </MayWriteProvider>
                </Match>
                <Match when={place.at() === 'press'}>
                  <PressPage settings={settings()} onBack={isPractice ? place.toLessons : place.toDay} />
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
                      undo={undoing()}
                      tablet={props.tablet}
                      backup={props.station}
                      months={state().months}
                      sharing={props.station}
                      practice={enteringPractice()}
                      diagnosis={drawDiagnosis()}
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
                      months={state().months}
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
          </PassProvider>
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
        <PassedOverDialog
          passedOver={lessons.passedOver()}
          onBackTo={({ id, step }) => {
            lessons.dismissPassedOver();
            void submit(id, { type: 'REOPENED', answers: { step } });
          }}
          onGoOn={lessons.dismissPassedOver}
        />
        <Show when={pin}>
          {(here) => (
            <Dialog isOpen={gate.isAsked()} title={words.pin.title} onClose={gate.giveUp}>
              <PinAsked
                pin={here()}
                nowMs={props.station.nowMs()}
                units={settings().units}
                onRight={gate.opened}
              />
            </Dialog>
          )}
        </Show>
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
      <IdleOver
        idle={idle}
        left={formatQuantity(idle.leftS(), 'seconds', settings().units, words.locale)}
        beside={<Silence alarm={alarm} />}
      >
        <Covered
          state={state()}
          settings={settings()}
          nowMs={props.station.nowMs()}
          onOpen={place.toClient}
        />
      </IdleOver>
    </DialogHeadProvider>
  );
}
