import { createEffect, createMemo, createSignal, Match, Show, Switch, untrack } from 'solid-js';
import { listEarlier } from '../../../shared/records/earlierClients';
import { findLastTime } from '../../../shared/records/findLastTime';
import { type FieldRefusal, type RawForm, readForm } from '../../../shared/records/readForm';
import type { ConsultationRecord } from '../../../shared/records/record';
import type { Settings } from '../../../shared/records/settings';
import { formTicketKey } from '../../../shared/records/ticket';
import type { Result } from '../../../shared/result';
import { formatQuantity } from '../../../shared/units/format';
import { BigButton } from '../../parts/BigButton';
import { Caution } from '../../parts/Caution';
import { createDraft, listMistakes } from '../../parts/form/draft';
import { Refusal } from '../../parts/Refusal';
import { useWords } from '../../parts/useWords';
import { isPastRead, type StationState } from '../../station/stationState';
import type { SubmitRefusal } from '../../station/submitRefusal';
import { makeReading } from '../ask/readContext';
import { LastVisitPage } from '../lastVisit/LastVisitPage';
import { showFirstRefused } from '../showFirstRefused';
import { ChairField, type ChairRefusal } from './ChairField';
import { EarlierClients } from './EarlierClients';
import { StartActions } from './StartActions';
import './start.css';
import { StylistField } from './StylistField';
import { findSameTicket, findStartForm, listSeats } from './startView';
import { TicketField } from './TicketField';

/** Whose consultation is it, and at which chair? A ticket that is open already is said before a second one starts. */
export function Start(props: {
  readonly settings: Settings;
  readonly nowMs: number;
  readonly clients: StationState['open'];
  readonly chair: string | null;
  /** Who is at the tablet: does her hair, until another is tapped. */
  readonly by: string;
  readonly closed: StationState['closed'];
  readonly months: StationState['months'];
  readonly open: (answers: RawForm) => Promise<Result<string, SubmitRefusal>>;
  readonly onOpened: (id: string) => void;
  readonly onBar: () => void;
}) {
  const words = useWords();
  const draft = createDraft(props.chair === null ? {} : { chair: props.chair });
  const [isTried, setIsTried] = createSignal(false);
  /** She is to be started as soon as the past is read. */
  const [isWaiting, setIsWaiting] = createSignal(false);
  const [isChoosing, setIsChoosing] = createSignal(false);
  /** What lies over the form, which keeps what was typed. */
  const [over, setOver] = createSignal<'lastVisit' | 'earlier' | null>(null);
  const [refusal, setRefusal] = createSignal<SubmitRefusal | null>(null);
  const write = (count: number) => formatQuantity(count, 'count', props.settings.units, words.locale);
  const form = () => findStartForm(props.settings.chairs);
  const seats = createMemo(() => listSeats(props.clients, props.settings.chairs));
  const same = createMemo(() => findSameTicket(props.clients, draft.raw().ticket));
  const refusals = (): readonly FieldRefusal[] => {
    const reading = makeReading(props.settings, props.nowMs);
    if (!isTried()) return listMistakes(form(), draft.raw(), reading);
    const read = readForm(form(), draft.raw(), reading);
    return read.ok ? [] : read.error;
  };
  const chair = () => String(draft.raw().chair ?? '');
  const taken = () => seats().find((seat) => write(seat.chair) === chair().trim() && seat.ticket !== null);
  const refuseChair = (): ChairRefusal | null => {
    const { start } = words;
    const chairs = write(seats().length);
    const wrong = refusals().find(({ path }) => path === 'chair');
    if (wrong !== undefined) {
      const isEmpty = chair().trim() === '';
      return { code: wrong.code, says: isEmpty ? start.chooseChair(chairs) : start.noSuchChair(chairs) };
    }
    const whose = taken()?.ticket ?? null;
    return whose === null ? null : { code: 'taken', says: start.taken(whose, chair().trim()) };
  };
  const sayWhere = ({ parked, chair: at }: ConsultationRecord) =>
    parked === null
      ? words.start.isOpenAt(write(at))
      : words.start.isParked(words.moments.dayAndTime(parked.untilAtMs));
  const change = (name: string, text: string) => {
    draft.set(name, text);
    setRefusal(null);
    setIsWaiting(false);
  };
  /** Part of what closed earlier would say too little of anybody. */
  const closed = () => (isPastRead(props) ? props.closed : []);
  const ticket = () => String(draft.raw().ticket ?? '');
  const stylist = () => String(draft.raw().stylist ?? props.by);
  /** Whoever is open already is not back: she is here. */
  const lastTime = createMemo(() => (same() === undefined ? findLastTime(closed(), ticket()) : null));
  /** Enter in the ticket: on where nothing has to be chosen, never past the question who she is. */
  const goOn = async () => {
    if (same() === undefined && lastTime() === null) await go();
  };

  const lastVisit = createMemo(() => closed().find(({ id }) => id === lastTime()?.id) ?? null);
  /** Others than the very ticket that is typed: that one is asked about below. */
  const earlier = createMemo(() => {
    const key = formTicketKey(ticket());
    return listEarlier(closed(), ticket()).filter(({ ticketKey }) => ticketKey !== key).length;
  });

  async function go(lastTimeId?: string): Promise<void> {
    setIsTried(true);
    if (refusals().length > 0 || taken() !== undefined) {
      showFirstRefused();
      return;
    }
    setIsWaiting(!isPastRead(props));
    if (isWaiting()) return;
    const opened = await props.open({
      ...draft.raw(),
      ...(lastTimeId === undefined ? {} : { lastTimeId }),
    });
    if (opened.ok) props.onOpened(opened.value);
    else setRefusal(opened.error);
  }

  /** What was tapped before the past was read goes on by itself, unless there is something to be asked then. */
  createEffect(() => {
    if (!isWaiting() || !isPastRead(props)) return;
    setIsWaiting(false);
    void untrack(goOn);
  });

  const renderForm = () => (
    <main class="start-page">
      <h1>{words.start.title}</h1>
      <div class="start-content">
        <TicketField
          value={ticket()}
          refusal={refusals().find(({ path }) => path === 'ticket')}
          units={props.settings.units}
          onChange={(text) => change('ticket', text)}
          onEnter={() => void goOn()}
          beside={
            <Show when={lastVisit() !== null || earlier() > 0}>
              <Show when={lastVisit()}>
                <BigButton kind="quiet" act="last-visit" isWay onPress={() => setOver('lastVisit')}>
                  {words.lastVisit.open}
                </BigButton>
              </Show>
              <Show when={earlier() > 0}>
                <BigButton kind="quiet" act="earlier-clients" isWay onPress={() => setOver('earlier')}>
                  {words.start.earlier(write(earlier()), ticket().trim())}
                </BigButton>
              </Show>
            </Show>
          }
        />
        <div class="start-side">
          <Show when={!isChoosing()}>
            <ChairField
              seats={seats()}
              write={write}
              value={chair()}
              refusal={refuseChair()}
              onChange={(text) => change('chair', text)}
            />
          </Show>
          <Show when={props.settings.staff.length > 1}>
            <StylistField
              staff={props.settings.staff}
              value={stylist()}
              isChoosing={isChoosing()}
              onChoosing={() => setIsChoosing(true)}
              onChange={(name) => {
                change('stylist', name);
                setIsChoosing(false);
              }}
            />
          </Show>
          <Show when={seats().every(({ ticket }) => ticket !== null)}>
            <Caution>
              <p>{words.start.noFreeChair}</p>
            </Caution>
          </Show>
          <Refusal refusal={refusal()} />
        </div>
      </div>
      <StartActions
        months={props.months}
        isWaiting={isWaiting()}
        same={same()}
        last={lastTime()}
        sayWhere={sayWhere}
        onCancel={() => props.onBar()}
        onGo={(lastTimeId) => void go(lastTimeId)}
        onThere={(id) => props.onOpened(id)}
      />
    </main>
  );
  return (
    <Switch fallback={renderForm()}>
      <Match when={over() === 'lastVisit' && lastVisit()}>
        {(closed) => (
          <LastVisitPage
            closed={closed()}
            settings={props.settings}
            onBack={() => setOver(null)}
            onSame={() => {
              const { id } = closed();
              setOver(null);
              void go(id);
            }}
          />
        )}
      </Match>
      <Match when={over() === 'earlier'}>
        <EarlierClients
          closed={closed()}
          typed={ticket()}
          settings={props.settings}
          onBack={() => setOver(null)}
          onChoose={(chosen) => {
            change('ticket', chosen);
            setOver(null);
          }}
        />
      </Match>
    </Switch>
  );
}
