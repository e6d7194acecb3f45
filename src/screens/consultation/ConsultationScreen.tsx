import {
  createEffect,
  createMemo,
  createSignal,
  Match,
  mergeProps,
  on,
  Show,
  Switch,
  splitProps,
} from 'solid-js';
import { Dynamic } from 'solid-js/web';
import type { Consultation } from '../../../machines/consultation/consultation';
import type { RawEvent } from '../../../shared/records/classify';
import type { ClosedRecord } from '../../../shared/records/closedRecord';
import { isAnythingOnHead } from '../../../shared/records/record';
import type { Settings } from '../../../shared/records/settings';
import { type BackStep, backSteps, type WayStep } from '../../../shared/records/steps';
import { type Result, refuse } from '../../../shared/result';
import { Dialog } from '../../parts/Dialog';
import { OnlyWatches } from '../../parts/OnlyWatches';
import type { PageSurroundings } from '../../parts/StepPage';
import { StrandRail } from '../../parts/StrandRail';
import { MayWriteProvider } from '../../parts/useMayWrite';
import { useWords } from '../../parts/useWords';
import type { SubmitRefusal } from '../../station/submitRefusal';
import { AnotherDay } from '../ask/AnotherDay';
import { findAskedAnew } from '../ask/anotherDayView';
import { sayWhose } from '../bar/sayWhose';
import { explainRefusal } from '../explainRefusal';
import { findHere, findKnot, findRailKnot } from '../knot';
import { LastVisitOver } from '../lastVisit/LastVisitOver';
import { GoBackDialog } from '../leaving/GoBackDialog';
import { createGoingBack } from '../leaving/goingBack';
import { MoreForClient } from '../leaving/MoreForClient';
import { createRinseSteps } from '../reaction/rinseSteps';
import { screenOf, stepOf } from '../screenOf';
import { SkinTestPage } from '../skinTest/SkinTestPage';
import { SkinTestWayProvider } from '../skinTest/skinTestWay';
import type { StepProps, Submit, SubmitAll } from '../stepProps';
import { createBreaking } from '../strandTest/breaking';
import './consultation.css';
import { isSaidAlready } from './isSaidAlready';
import { screens } from './screens';

interface Over {
  readonly page: 'skinTest' | 'lastVisit';
  readonly screen: string;
}

const isBackStep = (step: WayStep): step is BackStep => backSteps.some((each) => each === step);

/** One client: the strand on which she has come so far, and the screen of her state. */
export function ConsultationScreen(props: {
  readonly consultation: Consultation;
  readonly settings: Settings;
  readonly nowMs: number;
  readonly by: string;
  readonly isWriter: boolean;
  readonly submit: (raw: RawEvent, by?: string) => Promise<Result<void, SubmitRefusal>>;
  readonly submitAll: (raws: readonly RawEvent[]) => Promise<Result<void, SubmitRefusal>>;
  /** Every record that is closed: last time is looked up there. */
  readonly closed: readonly ClosedRecord[];
  readonly finishClosing: StepProps['finishClosing'];
  readonly onWho: () => void;
  readonly onBar: () => void;
}) {
  const words = useWords();
  const [isMoreOpen, setIsMoreOpen] = createSignal(false);
  /** Which page lies over the screen, and over which one: it goes when that one does. */
  const [over, setOver] = createSignal<Over | null>(null);
  const lay = (page: Over['page']) => setOver({ page, screen: shown() });
  const isOver = (page: Over['page']) => over()?.page === page && over()?.screen === shown();
  const lastVisit = createMemo(() => {
    const id = props.consultation.record.lastTime?.id;
    return props.closed.find((each) => each.id === id) ?? null;
  });
  const submit: Submit = async (raw, by) => {
    const taken = await props.submit(raw, by);
    if (taken.ok) return taken;
    return refuse(explainRefusal(taken.error, props.consultation, raw, props.settings, props.nowMs));
  };
  const submitAll: SubmitAll = async (raws) => {
    const taken = await props.submitAll(raws);
    if (taken.ok) return taken;
    const last = raws.at(-1);
    if (last === undefined) return refuse(taken.error);
    return refuse(explainRefusal(taken.error, props.consultation, last, props.settings, props.nowMs));
  };
  const [client] = splitProps(props, ['consultation', 'settings', 'nowMs', 'by', 'finishClosing']);
  const given = mergeProps(client, { submit, submitAll });
  const rinseSteps = createRinseSteps(given);
  const goingBack = createGoingBack(given);
  const name = createMemo(() => {
    const screen = screenOf(props.consultation.state);
    return rinseSteps.isOpen() && screen !== 'ended' ? 'reaction' : screen;
  });
  /** What holds for a day was told on another one: that is asked before anything else. */
  const askedAnew = createMemo(() =>
    name() === screenOf(props.consultation.state)
      ? findAskedAnew(props.consultation, props.settings, props.nowMs)
      : null,
  );
  const shown = () => (askedAnew() === null ? name() : 'anotherDay');
  createEffect(on(name, () => setOver(null), { defer: true }));
  const step = createMemo(() => {
    const { state, record } = props.consultation;
    return findHere(stepOf(state), findKnot(record, props.settings, props.nowMs), record);
  });
  const knot = createMemo(() => {
    const find = step() === 'finish' ? findKnot : findRailKnot;
    return find(props.consultation.record, props.settings, props.nowMs);
  });
  const kicker = createMemo(() => sayWhose(props.consultation, words, props.settings.units));
  const isOnSkin = createMemo(() => isAnythingOnHead(props.consultation.record));
  const breaking = createBreaking(given);
  /**
   * Where another window writes, its every entry makes the screen anew; here the draft is the person's own. Other units
   * make it anew as well, so that no figure in a field changes its unit.
   */
  const edition = createMemo(() =>
    [
      shown(),
      props.isWriter ? '' : props.consultation.log.length,
      ...Object.values(props.settings.units),
    ].join(' '),
  );

  const page: PageSurroundings = {
    get kicker() {
      return kicker();
    },
    get isOnSkin() {
      return isOnSkin();
    },
    get breaking() {
      return breaking.strands();
    },
    get notBroken() {
      return breaking.refusal();
    },
    onReaction: () => rinseSteps.open(),
    onMore: () => setIsMoreOpen(true),
    onBar: () => props.onBar(),
    onBackTo: (to) => {
      setIsMoreOpen(false);
      goingBack.ask(to);
    },
  };
  const stepProps: StepProps = mergeProps(given, { page, rinseSteps });

  return (
    <MayWriteProvider value={() => props.isWriter}>
      <main
        class="consultation"
        data-consultation={props.consultation.id}
        data-step={shown()}
        data-log-length={props.consultation.log.length}
      >
        <SkinTestWayProvider value={() => lay('skinTest')}>
          <StrandRail
            here={step()}
            knot={knot()}
            isSaid={(step) => isSaidAlready(step, props.consultation.record, props.settings)}
            mayGoTo={(to) => props.isWriter && isBackStep(to) && goingBack.mayGo(to)}
            onGoTo={(to) => isBackStep(to) && page.onBackTo(to)}
          />
          <Show when={edition()} keyed>
            {(_edition) => (
              <Switch
                fallback={
                  <Show when={askedAnew()} fallback={<Dynamic component={screens[name()]} {...stepProps} />}>
                    {(here) => <AnotherDay {...stepProps} here={here()} />}
                  </Show>
                }
              >
                <Match when={isOver('skinTest')}>
                  <SkinTestPage {...stepProps} onBack={() => setOver(null)} />
                </Match>
                <Match when={isOver('lastVisit') && lastVisit()}>
                  {(closed) => (
                    <LastVisitOver {...stepProps} closed={closed()} onBack={() => setOver(null)} />
                  )}
                </Match>
              </Switch>
            )}
          </Show>
          <GoBackDialog
            consultation={props.consultation}
            settings={props.settings}
            to={goingBack.to()}
            refusal={goingBack.refusal()}
            onGo={goingBack.go}
            onStay={goingBack.stay}
          />
          <Dialog
            isOpen={isMoreOpen()}
            title={`${words.general.moreForClient} · ${kicker()}`}
            onClose={() => setIsMoreOpen(false)}
          >
            <OnlyWatches />
            <MoreForClient
              {...stepProps}
              {...(lastVisit() === null ? {} : { onLastVisit: () => lay('lastVisit') })}
              onWho={() => props.onWho()}
              onDone={() => setIsMoreOpen(false)}
            />
          </Dialog>
        </SkinTestWayProvider>
      </main>
    </MayWriteProvider>
  );
}
