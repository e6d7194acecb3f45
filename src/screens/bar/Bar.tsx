import { createMemo, createSignal, type JSX, Show } from 'solid-js';
import type { ClosedRecord } from '../../../shared/records/closedRecord';
import type { Settings } from '../../../shared/records/settings';
import { formatQuantity } from '../../../shared/units/format';
import { Dialog } from '../../parts/Dialog';
import { useWords } from '../../parts/useWords';
import type { StationState } from '../../station/stationState';
import type { TabletInUse } from '../../tablet/createTablet';
import type { Alarm } from '../alarm/createAlarm';
import { Silence } from '../alarm/Silence';
import { findOffer, SoundCheck, SoundCheckLine } from '../alarm/SoundCheck';
import { findTabletLack, TabletNote } from '../alarm/TabletNote';
import './bar.css';
import { BarWays } from './BarWays';
import { Cuttings } from './Cuttings';
import { Ended } from './Ended';
import { Lanes } from './Lanes';
import { isCuttingDue, isSameCuttings, listCuttings } from './listCuttings';
import { ParkedList } from './ParkedList';
import { Strip } from './Strip';
import { isBackLate, viewBar } from './viewBar';
import { WaitingRow } from './WaitingRow';

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
  /** What the way to start somebody is called, where it is another one. */
  readonly start?: string | undefined;
  /** Absent in practice. */
  readonly onDay?: (() => void) | undefined;
  readonly onSettings?: (() => void) | undefined;
  readonly alarm: Alarm;
  readonly tablet: TabletInUse | undefined;
  /** Further ways, beside the parked ones. */
  readonly ways?: JSX.Element;
  /** What an empty station offers in place of a clock. */
  readonly offer?: JSX.Element;
}) {
  const words = useWords();
  const [isSoundOpen, setIsSoundOpen] = createSignal(false);
  const [isParkedOpen, setIsParkedOpen] = createSignal(false);
  const view = createMemo(() => viewBar([...props.state.open.values()], props.settings.chairs, props.nowMs));
  const write = (count: number) => formatQuantity(count, 'count', props.settings.units, words.locale);
  const late = () => view().parked.filter((each) => isBackLate(each, props.nowMs)).length;
  const cuttings = createMemo(() => listCuttings(props.state, props.nowMs), [], {
    equals: isSameCuttings,
  });
  const isCuttingToSee = () => cuttings().some((each) => isCuttingDue(each, props.nowMs));
  const sayParked = () => {
    const away = write(view().parked.length + view().waiting.length);
    const parked = late() === 0 ? words.bar.parked(away) : words.bar.parkedLate(away, write(late()));
    return isCuttingToSee() ? words.bar.cuttings.due(parked) : parked;
  };
  /** The head has room for one thing beside its ways: to be silenced, who was closed, what the tablet lacks. */
  const soundOffer = () => findOffer(props.tablet, props.nowMs);
  const isNoteShown = () =>
    props.closed === undefined &&
    !props.alarm.isCalling() &&
    (findTabletLack(props.tablet) !== null || soundOffer() !== null);
  const isHeadTaken = () => props.closed !== undefined || props.alarm.isCalling() || isNoteShown();
  const isNobodyHere = () => props.state.mode !== 'starting' && view().places.every(isFree);

  return (
    <main class="bar">
      <header class="bar-head">
        <h1 class={isHeadTaken() ? 'only-heard' : ''}>{words.bar.title}</h1>
        <Silence alarm={props.alarm} />
        <Ended closed={props.closed} />
        <Show when={isNoteShown() && props.tablet}>
          {(tablet) => (
            <div class="bar-notes">
              <TabletNote tablet={tablet()} />
              <Show when={soundOffer()}>
                {(offer) => <SoundCheckLine offer={offer()} onOpen={() => setIsSoundOpen(true)} />}
              </Show>
            </div>
          )}
        </Show>
        <BarWays
          by={props.by}
          isWriter={props.isWriter}
          parked={sayParked()}
          isParkedLate={late() > 0 || isCuttingToSee()}
          onWho={props.onWho}
          onParked={() => setIsParkedOpen(true)}
          onDay={props.onDay}
          onSettings={props.onSettings}
          onStart={() => props.onStart(null)}
          start={props.start}
        >
          {props.ways}
        </BarWays>
      </header>
      <Show
        when={view().due[0]}
        fallback={
          <div class="strip strip-quiet">
            <p>
              <Show when={isNobodyHere()} fallback={words.bar.nothingRuns}>
                <strong>{words.bar.nobody}</strong> {props.isWriter ? words.bar.nobodyHint : ''}
              </Show>
            </p>
            {props.offer}
          </div>
        }
      >
        {(due) => (
          <Strip
            due={due()}
            nowMs={props.nowMs}
            units={props.settings.units}
            onOpen={(id) => props.onOpen(id)}
          />
        )}
      </Show>
      {/* Until the records are read nobody knows which places are free. */}
      <Show when={props.state.mode !== 'starting'}>
        <Lanes
          places={view().places}
          settings={props.settings}
          nowMs={props.nowMs}
          isWriter={props.isWriter}
          onOpen={props.onOpen}
          onStart={props.onStart}
        />
      </Show>
      <Show when={view().waiting.length > 0}>
        <WaitingRow
          waiting={view().waiting}
          settings={props.settings}
          nowMs={props.nowMs}
          onOpen={props.onOpen}
          onAll={() => setIsParkedOpen(true)}
        />
      </Show>
      <Show when={props.tablet}>
        {(tablet) => (
          <SoundCheck
            tablet={tablet()}
            nowMs={props.nowMs}
            isOpen={isSoundOpen()}
            onClose={() => setIsSoundOpen(false)}
          />
        )}
      </Show>
      <Dialog isOpen={isParkedOpen()} title={words.bar.parkedTitle} onClose={() => setIsParkedOpen(false)}>
        <ParkedList
          view={view()}
          settings={props.settings}
          nowMs={props.nowMs}
          onOpen={(id) => props.onOpen(id)}
        />
        <Cuttings
          cuttings={cuttings()}
          units={props.settings.units}
          nowMs={props.nowMs}
          onOpen={(id) => props.onOpen(id)}
        />
      </Dialog>
    </main>
  );
}

const isFree = ({ consultation }: { readonly consultation: unknown }): boolean => consultation === null;
