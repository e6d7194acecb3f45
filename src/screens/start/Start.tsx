import { createMemo, createSignal, Show } from 'solid-js';
import { findLastTime } from '../../../shared/records/findLastTime';
import { type FieldRefusal, type RawForm, readForm } from '../../../shared/records/readForm';
import type { ConsultationRecord } from '../../../shared/records/record';
import type { Settings } from '../../../shared/records/settings';
import type { Result } from '../../../shared/result';
import { formatQuantity } from '../../../shared/units/format';
import { BigButton } from '../../parts/BigButton';
import { Caution } from '../../parts/Caution';
import { createDraft, listMistakes } from '../../parts/form/draft';
import { PageActions } from '../../parts/PageActions';
import { Refusal } from '../../parts/Refusal';
import { useWords } from '../../parts/useWords';
import type { StationState } from '../../station/stationState';
import type { SubmitRefusal } from '../../station/submitRefusal';
import { makeReading } from '../ask/readContext';
import { showFirstRefused } from '../showFirstRefused';
import { ChairField, type ChairRefusal } from './ChairField';
import { sayLastTime } from './sayLastTime';
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
  readonly open: (answers: RawForm) => Promise<Result<string, SubmitRefusal>>;
  readonly onOpened: (id: string) => void;
  readonly onBar: () => void;
}) {
  const words = useWords();
  const draft = createDraft(props.chair === null ? {} : { chair: props.chair });
  const [isTried, setIsTried] = createSignal(false);
  const [isChoosing, setIsChoosing] = createSignal(false);
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
  };
  const ticket = () => String(draft.raw().ticket ?? '');
  const stylist = () => String(draft.raw().stylist ?? props.by);
  /** Whoever is open already is not back: she is here. */
  const lastTime = createMemo(() => (same() === undefined ? findLastTime(props.closed, ticket()) : null));
  /** Enter in the ticket: on where nothing has to be chosen, never past the question who she is. */
  const goOn = async () => {
    if (same() === undefined && lastTime() === null) await go();
  };

  async function go(lastTimeId?: string): Promise<void> {
    setIsTried(true);
    if (refusals().length > 0 || taken() !== undefined) {
      showFirstRefused();
      return;
    }
    const opened = await props.open({
      ...draft.raw(),
      ...(lastTimeId === undefined ? {} : { lastTimeId }),
    });
    if (opened.ok) props.onOpened(opened.value);
    else setRefusal(opened.error);
  }

  return (
    <main class="start-page">
      <h1>{words.start.title}</h1>
      <div class="start-content">
        <TicketField
          value={ticket()}
          refusal={refusals().find(({ path }) => path === 'ticket')}
          units={props.settings.units}
          onChange={(text) => change('ticket', text)}
          onEnter={() => void goOn()}
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
      <PageActions>
        <Show when={same()}>
          {(found) => (
            <p class="last-time" role="status" data-same-ticket={found().id}>
              <strong>{sayWhere(found().record)}</strong> {words.start.sameTicket}
            </p>
          )}
        </Show>
        <Show when={lastTime()}>
          {(last) => (
            <p class="last-time" role="status" data-last-time={last().id}>
              <strong>{words.start.sameAs(sayLastTime(last(), words))}</strong>
            </p>
          )}
        </Show>
        <BigButton act="cancel" isWay onPress={() => props.onBar()}>
          {words.general.cancel}
        </BigButton>
        <Show
          when={same()}
          fallback={
            <Show
              when={lastTime()}
              fallback={
                <BigButton kind="primary" act="open" onPress={() => void go()}>
                  {words.start.go}
                </BigButton>
              }
            >
              {(last) => (
                <>
                  <BigButton act="open" onPress={() => void go()}>
                    {words.start.goOther}
                  </BigButton>
                  <BigButton kind="primary" act="open-same" onPress={() => void go(last().id)}>
                    {words.start.goSame}
                  </BigButton>
                </>
              )}
            </Show>
          }
        >
          {(found) => (
            <>
              <BigButton act="open-anyway" onPress={() => void go()}>
                {words.start.goAnyway}
              </BigButton>
              <BigButton kind="primary" act="go-there" onPress={() => props.onOpened(found().id)}>
                {words.start.goThere}
              </BigButton>
            </>
          )}
        </Show>
      </PageActions>
    </main>
  );
}
