import { createMemo, createSignal, For, Match, Show, Switch } from 'solid-js';
import { formatQuantity } from '../../../shared/units/format';
import { BigButton } from '../../parts/BigButton';
import { createPages } from '../../parts/createPages';
import { useWords } from '../../parts/useWords';
import type { StationInUse } from '../../station/createStation';
import type { Who } from '../who';
import { listSkinTests, viewTest } from './listSkinTests';
import { OneTest } from './OneTest';
import { PutOnForTicket } from './PutOnForTicket';
import { SkinTestRowButton } from './SkinTestRowButton';
import './skinTest.css';
import { PlainPage } from '../../parts/PlainPage';
import { makeSubmitTest } from './submitTest';
import { TakeBack } from './TakeBack';

type At = { readonly show: 'list' | 'putOn' } | { readonly show: 'one' | 'takeBack'; readonly id: string };

/** The skin tests of this salon: who is to be read now, who waits until when, and putting one on. */
export function SkinTests(props: {
  readonly station: Pick<StationInUse, 'state' | 'nowMs' | 'putOnSkinTest' | 'changeSkinTest'>;
  readonly who: Who;
  readonly onBar: () => void;
}) {
  const words = useWords();
  const [at, setAt] = createSignal<At>({ show: 'list' });
  const state = () => props.station.state();
  const settings = () => state().settings.settings;
  const nowMs = () => props.station.nowMs();
  const write = (count: number) => formatQuantity(count, 'count', settings().units, words.locale);
  const rows = createMemo(() => listSkinTests(state().skinTests, settings().profile, nowMs()));
  const { shown, page, pages, turn } = createPages(rows);
  const one = () => {
    const now = at();
    if (!('id' in now)) return null;
    const test = state().skinTests.find(({ id, takenBack }) => id === now.id && takenBack === null);
    return test === undefined ? null : viewTest(test, settings().profile, nowMs());
  };
  const citedBy = (id: string) =>
    [...state().open.values()].filter(({ record }) => record.skinTest?.skinTestId === id);
  const submit = makeSubmitTest(props.station, props.who, () => one()?.test ?? null);
  const toList = () => setAt({ show: 'list' });

  return (
    <Switch
      fallback={
        <PlainPage
          step="skinTests"
          kicker={words.skinTests.lead}
          title={words.skinTests.title}
          actions={
            <>
              <BigButton act="bar" isWay onPress={props.onBar}>
                {words.general.bar}
              </BigButton>
              <Show when={pages() > 1}>
                <BigButton act="more-tests" isWay onPress={turn}>
                  {words.skinTests.page(write(page()), write(pages()))}
                </BigButton>
              </Show>
              <BigButton kind="primary" act="put-on" onPress={() => setAt({ show: 'putOn' })}>
                {words.skinTests.putOnOne}
              </BigButton>
            </>
          }
        >
          <Show
            when={rows().length > 0}
            fallback={
              <div class="skin-tests-none">
                <div class="big-word">{words.skinTests.none}</div>
                <p class="soft">{words.skinTests.noneHint}</p>
              </div>
            }
          >
            <ul class="skin-tests">
              <For each={shown()}>
                {(row) => (
                  <SkinTestRowButton row={row} onOpen={() => setAt({ show: 'one', id: row.test.id })} />
                )}
              </For>
            </ul>
          </Show>
        </PlainPage>
      }
    >
      <Match when={at().show === 'putOn'}>
        <PutOnForTicket
          settings={settings()}
          nowMs={nowMs()}
          clients={state().open}
          submit={submit}
          onDone={toList}
        />
      </Match>
      <Match when={at().show === 'takeBack' && one()}>
        {(row) => (
          <TakeBack
            test={row().test}
            settings={settings()}
            nowMs={nowMs()}
            by={props.who.by()}
            submit={submit}
            onDone={toList}
          />
        )}
      </Match>
      <Match when={at().show === 'one' && one()}>
        {(row) => (
          <OneTest
            row={row()}
            citedBy={citedBy(row().test.id)}
            settings={settings()}
            submit={submit}
            onTakeBack={() => setAt({ show: 'takeBack', id: row().test.id })}
            onBack={toList}
          />
        )}
      </Match>
    </Switch>
  );
}
