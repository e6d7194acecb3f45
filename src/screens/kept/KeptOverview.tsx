import { createMemo, createSignal, For, Show } from 'solid-js';
import type { Result } from '../../../shared/result';
import { formatQuantity } from '../../../shared/units/format';
import { BigButton } from '../../parts/BigButton';
import { Caution } from '../../parts/Caution';
import { Explain } from '../../parts/Explain';
import { PlainPage } from '../../parts/PlainPage';
import { Refusal } from '../../parts/Refusal';
import { useMayWrite } from '../../parts/useMayWrite';
import { useWords } from '../../parts/useWords';
import type { PastKeeping } from '../../station/keeping';
import type { StationState } from '../../station/stationState';
import type { SubmitRefusal } from '../../station/submitRefusal';
import { findKeptAtMs, listThings, sayThings } from './viewKept';

/** How much is kept, for how long and why; what is past its time; and what was erased. */
export function KeptOverview(props: {
  readonly state: StationState;
  readonly past: PastKeeping;
  /** Something was erased just now. */
  readonly hasErased: boolean;
  readonly onPast: () => void;
  readonly onFind: () => void;
  readonly finish: () => Promise<Result<void, SubmitRefusal>>;
  readonly onDay: () => void;
  readonly onBar: () => void;
}) {
  const words = useWords();
  const said = () => words.kept;
  const mayWrite = useMayWrite();
  const [refusal, setRefusal] = createSignal<SubmitRefusal | null>(null);
  const settings = () => props.state.settings.settings;
  const write = (count: number) => formatQuantity(count, 'count', settings().units, words.locale);
  const things = createMemo(() => listThings(props.state));
  const pastCount = () => props.past.closed.length + props.past.skinTests.length;
  const erasings = () => props.state.erasings;
  const sayTerm = () => {
    const { keepMonths, erasesByItself } = settings();
    if (keepMonths === null) return said().noEnd;
    return `${said().forMonths(write(keepMonths))} ${erasesByItself ? said().thenByItself : said().thenAsked}`;
  };
  const sayErased = () => {
    const { tombstones } = erasings();
    const last = tombstones.at(-1);
    if (last === undefined) return said().nothingErased;
    const count = tombstones.reduce((sum, { ids }) => sum + ids.length, 0);
    return said().erasedSo(write(count), words.moments.date(last.atMs), last.by, last.code);
  };
  const finish = async () => {
    const finished = await props.finish();
    setRefusal(finished.ok ? null : finished.error);
  };

  return (
    <PlainPage
      step="kept"
      kicker={said().kicker}
      title={said().title}
      actions={
        <>
          <BigButton act="bar" isWay onPress={props.onBar}>
            {words.general.bar}
          </BigButton>
          <Show
            when={erasings().unfinished > 0}
            fallback={
              <BigButton act="day" isWay onPress={props.onDay}>
                {words.bar.day}
              </BigButton>
            }
          >
            <BigButton
              kind="attention"
              act="finish-erasing"
              isDisabled={!mayWrite()}
              onPress={() => void finish()}
            >
              {said().finishIt}
            </BigButton>
          </Show>
          <BigButton kind="primary" act="erase-by-ticket" isDisabled={!mayWrite()} onPress={props.onFind}>
            {said().byTicket}
          </BigButton>
        </>
      }
    >
      <Show when={erasings().unfinished > 0}>
        <Caution kind="attention">
          <p data-unfinished>{said().unfinished}</p>
          <Refusal refusal={refusal()} />
        </Caution>
      </Show>
      <div class="columns">
        <section class="panel kept-panel" data-panel="kept">
          <Show when={things()[0]} fallback={<h2 class="big-word">{said().none}</h2>}>
            {(oldest) => (
              <>
                <h2 class="big-word">{sayThings(things(), words, write)}</h2>
                <p>{said().since(words.moments.date(findKeptAtMs(oldest())))}</p>
              </>
            )}
          </Show>
          <p>{sayTerm()}</p>
          <Show when={erasings().unfinished === 0}>
            <p class="soft">{said().why}</p>
            <p class="soft">{said().law}</p>
          </Show>
        </section>
        <div class="column">
          <section class="panel kept-panel" data-panel="past">
            <h2>{said().pastTitle}</h2>
            <Show
              when={pastCount() > 0}
              fallback={<p>{settings().keepMonths === null ? said().notWithoutEnd : said().nothingPast}</p>}
            >
              <BigButton act="look-at-past" isDisabled={!mayWrite()} onPress={props.onPast}>
                {said().lookAt(write(pastCount()))}
              </BigButton>
            </Show>
            <Show when={props.past.stopsStanding > 0}>
              <p class="soft">{said().stopsLeft(write(props.past.stopsStanding))}</p>
            </Show>
            <Show when={props.past.open > 0}>
              <p class="soft">{said().openLeft(write(props.past.open))}</p>
            </Show>
          </section>
          <section class="panel kept-panel" data-panel="erased">
            <h2>{said().erasedTitle}</h2>
            <p role="status">
              <Show when={props.hasErased}>
                <strong>{said().justErased}</strong>{' '}
              </Show>
              {sayErased()}
            </p>
            <Explain title={said().whatStays} asks={said().whatStays}>
              <ul class="listed">
                <For each={said().stays}>{(line) => <li>{line}</li>}</For>
              </ul>
            </Explain>
          </section>
        </div>
      </div>
    </PlainPage>
  );
}
