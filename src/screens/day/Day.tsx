import { createMemo, createSignal, For, Show } from 'solid-js';
import { formatQuantity } from '../../../shared/units/format';
import { BigButton } from '../../parts/BigButton';
import { useWords } from '../../parts/useWords';
import type { StationState } from '../../station/stationState';
import '../layout.css';
import './day.css';
import { gatherDay, nameDayFile, writeDay } from './dayRecords';
import { saveText } from './saveText';

/** What closed today and what is still open; and all of it as one file. */
export function Day(props: {
  readonly state: StationState;
  readonly nowMs: number;
  readonly onBar: () => void;
}) {
  const words = useWords();
  const said = () => words.day;
  const [savedAs, setSavedAs] = createSignal<string | null>(null);
  const records = createMemo(() => gatherDay(props.state, props.nowMs));
  const write = (value: number) =>
    formatQuantity(value, 'count', props.state.settings.settings.units, words.locale);
  const download = () => {
    const day = gatherDay(props.state, props.nowMs);
    const name = nameDayFile(day.day);
    saveText(name, writeDay(day), 'application/json');
    setSavedAs(name);
  };
  type Entry = ReturnType<typeof records>['open'][number];
  const sayEntry = ({ record }: Entry) => said().entry(record.ticket, write(record.chair));
  const sayContents = ({ record }: Entry) => [
    said().strands(write(record.strands.length)),
    said().bowls(write(record.bowls.length)),
  ];

  return (
    <main class="day-page" data-step="day">
      <header>
        <h1>{said().title}</h1>
      </header>
      <section class="day-content" aria-label={said().title} tabindex="0">
        <div class="columns">
          <section class="panel" data-panel="closed">
            <h2>{said().closed}</h2>
            <Show when={records().closed.length > 0} fallback={<p>{said().nothingClosed}</p>}>
              <ul class="listed">
                <For each={records().closed}>
                  {(entry) => (
                    <li data-record={entry.record.id}>
                      <strong>{sayEntry(entry)}</strong>
                      <br />
                      {said().endedAt(said().endings[entry.how], words.moments.time(entry.endedAtMs))}
                      {' · '}
                      {sayContents(entry).join(' · ')}
                    </li>
                  )}
                </For>
              </ul>
            </Show>
          </section>
          <section class="panel" data-panel="open">
            <h2>{said().open}</h2>
            <Show when={records().open.length > 0} fallback={<p>{said().nothingOpen}</p>}>
              <ul class="listed">
                <For each={records().open}>
                  {(entry) => (
                    <li data-record={entry.record.id}>
                      <strong>{sayEntry(entry)}</strong>
                      <br />
                      {entry.record.parked === null ? '' : `${said().parked} · `}
                      {sayContents(entry).join(' · ')}
                    </li>
                  )}
                </For>
              </ul>
            </Show>
          </section>
        </div>
        <p class="soft">{said().downloadHint}</p>
        <p aria-live="polite">
          <Show when={savedAs()}>{(name) => <strong>{said().downloaded(name())}</strong>}</Show>
        </p>
      </section>
      <footer class="step-actions">
        <BigButton act="bar" onPress={props.onBar}>
          {words.general.bar}
        </BigButton>
        <BigButton kind="primary" act="download-day" onPress={download}>
          {said().download}
        </BigButton>
      </footer>
    </main>
  );
}
