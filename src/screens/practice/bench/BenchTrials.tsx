import { createMemo, createSignal, For, Match, Show, Switch } from 'solid-js';
import type { RawBenchEvent } from '../../../../shared/records/bench/classify';
import { formatQuantity } from '../../../../shared/units/format';
import { BigButton } from '../../../parts/BigButton';
import { createPages } from '../../../parts/createPages';
import { PlainPage } from '../../../parts/PlainPage';
import { useWords } from '../../../parts/useWords';
import type { StationInUse } from '../../../station/createStation';
import { StatusRow } from '../../skinTest/StatusRow';
import '../../skinTest/skinTest.css';
import { goAsSomebody, type Who } from '../../who';
import { OneTrial } from './OneTrial';
import { StartTrial } from './StartTrial';
import { TakeBackTrial } from './TakeBackTrial';
import { drawStage, listBench, sayHairOf, sayWhen } from './viewBench';

type At = { readonly show: 'list' | 'start' } | { readonly show: 'one' | 'takeBack'; readonly id: string };

/** The trials of this salon on cut hair: what is to be done now, what dries, what was seen; and starting one. */
export function BenchTrials(props: {
  readonly station: Pick<StationInUse, 'state' | 'nowMs' | 'startBenchTrial' | 'changeBenchTrial'>;
  readonly who: Who;
  /** To the sprays of the shelf, each with its warmth trial; in practice there are none. */
  readonly onWarmthTrial: (() => void) | undefined;
  readonly onBack: () => void;
}) {
  const words = useWords();
  const said = () => words.bench;
  const [at, setAt] = createSignal<At>({ show: 'list' });
  const state = () => props.station.state();
  const settings = () => state().settings.settings;
  const nowMs = () => props.station.nowMs();
  const write = (count: number) => formatQuantity(count, 'count', settings().units, words.locale);
  const rows = createMemo(() => listBench(state().bench, nowMs()));
  const { shown, page, pages, turn } = createPages(rows);
  const one = () => {
    const now = at();
    return 'id' in now ? (rows().find(({ trial }) => trial.id === now.id) ?? null) : null;
  };
  const toList = () => setAt({ show: 'list' });
  const change = (id: string, raw: RawBenchEvent, by?: string) =>
    goAsSomebody(props.who, () => props.station.changeBenchTrial(id, by ?? props.who.by(), raw));
  return (
    <Switch
      fallback={
        <PlainPage
          step="bench"
          kicker={props.onWarmthTrial === undefined ? said().kickerPractice : said().kicker}
          title={said().title}
          actions={
            <>
              <BigButton act="leave-bench" isWay onPress={props.onBack}>
                {words.general.back}
              </BigButton>
              <Show when={props.onWarmthTrial}>
                {(toWarmth) => (
                  <BigButton act="to-warmth" onPress={() => toWarmth()()}>
                    {said().warmth}
                  </BigButton>
                )}
              </Show>
              <Show when={pages() > 1}>
                <BigButton act="more-trials" isWay onPress={turn}>
                  {said().page(write(page()), write(pages()))}
                </BigButton>
              </Show>
              <BigButton kind="primary" act="start-trial" onPress={() => setAt({ show: 'start' })}>
                {said().startOne}
              </BigButton>
            </>
          }
        >
          <Show
            when={rows().length > 0}
            fallback={
              <div class="skin-tests-none">
                <div class="big-word">{said().none}</div>
                <p class="soft">{said().noneHint}</p>
              </div>
            }
          >
            <ul class="skin-tests">
              <For each={shown()}>
                {(row) => (
                  <StatusRow
                    data={{ 'data-trial': row.trial.id, 'data-stage': row.stage }}
                    name={said().kinds[row.trial.kind]}
                    how={[
                      sayHairOf(row.trial.hair, words),
                      said().by(words.moments.shortDay(row.trial.startedAtMs), row.trial.startedBy),
                    ]}
                    status={drawStage(row.stage)}
                    what={said().stages[row.stage]}
                    when={sayWhen(row, words)}
                    onOpen={() => setAt({ show: 'one', id: row.trial.id })}
                  />
                )}
              </For>
            </ul>
          </Show>
        </PlainPage>
      }
    >
      <Match when={at().show === 'start'}>
        <StartTrial
          units={settings().units}
          start={(answers) =>
            goAsSomebody(props.who, () => props.station.startBenchTrial(props.who.by(), answers))
          }
          onStarted={(id) => setAt({ show: 'one', id })}
          onBack={toList}
        />
      </Match>
      <Match when={at().show === 'takeBack' && one()}>
        {(row) => (
          <TakeBackTrial
            trial={row().trial}
            settings={settings()}
            nowMs={nowMs()}
            by={props.who.by()}
            change={change}
            onDone={toList}
          />
        )}
      </Match>
      <Match when={at().show === 'one' && one()}>
        {(row) => (
          <OneTrial
            row={row()}
            nowMs={nowMs()}
            change={(raw) => change(row().trial.id, raw)}
            onTakeBack={() => setAt({ show: 'takeBack', id: row().trial.id })}
            onBack={toList}
          />
        )}
      </Match>
    </Switch>
  );
}
