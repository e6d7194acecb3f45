import { createMemo, createSignal, For, on, Show } from 'solid-js';
import { writeTableSchema } from '../../../shared/records/table/tableSchema';
import { formatQuantity } from '../../../shared/units/format';
import { BigButton } from '../../parts/BigButton';
import { PageActions } from '../../parts/PageActions';
import { useWords } from '../../parts/useWords';
import type { StationState } from '../../station/stationState';
import '../layout.css';
import './day.css';
import { gatherFindings } from './dayFindings';
import { type DayRecords, gatherDay, nameDay, nameDayFile, writeDay } from './dayRecords';
import { writeDayTable } from './dayTable';
import { EntryList } from './EntryList';
import { Findings } from './Findings';
import { saveText } from './saveText';

/** What closed today and what is still open; and all of it as one file. */
export function Day(props: {
  readonly state: StationState;
  readonly nowMs: number;
  /** Nothing of the demo leaves this tablet without saying that it is one. */
  readonly isDemo: boolean;
  readonly onBar: () => void;
}) {
  const words = useWords();
  const said = () => words.day;
  const [savedAs, setSavedAs] = createSignal<string | null>(null);
  const day = createMemo(() => nameDay(props.nowMs));
  const gather = () => gatherDay(props.state, props.nowMs);
  /** Once for each entry that is written and each day that begins, not every second. */
  const records = createMemo(on([day, () => props.state], gather));
  const findings = createMemo(() => gatherFindings(records()));
  const units = () => props.state.settings.settings.units;
  const save = (kind: 'json' | 'csv' | 'schema.json', type: string, write: (today: DayRecords) => string) => {
    const today = gather();
    const name = nameDayFile(today.day, props.isDemo, kind);
    saveText(name, write(today), type);
    setSavedAs(name);
  };
  const download = () => save('json', 'application/json', (today) => writeDay(today, props.isDemo));
  const downloadTable = () => save('csv', 'text/csv', (today) => writeDayTable(today, units()));
  const downloadColumns = () => save('schema.json', 'application/json', () => writeTableSchema(units()));
  const sayEnded = ({ how, endedAtMs }: DayRecords['closed'][number]) =>
    said().endedAt(said().endings[how], words.moments.time(endedAtMs));
  const sayOpen = ({ record }: DayRecords['open'][number]) => {
    if (record.ended !== null) return said().notWritten;
    return record.parked === null ? '' : said().parked;
  };

  return (
    <main class="day-page" data-step="day">
      <header>
        <h1>{said().title}</h1>
        <p class="day-endings" data-endings>
          <For each={findings().endings}>
            {({ how, count }) => (
              <span>{said().endingCount(how, formatQuantity(count, 'count', units(), words.locale))}</span>
            )}
          </For>
        </p>
      </header>
      <section class="day-content" aria-label={said().title} tabindex="0">
        <div class="day-columns">
          <EntryList
            panel="closed"
            title={said().closed}
            empty={said().nothingClosed}
            entries={records().closed}
            units={units()}
            sayState={sayEnded}
          />
          <Findings findings={findings()} units={units()} />
          <EntryList
            panel="open"
            title={said().open}
            empty={said().nothingOpen}
            entries={records().open}
            units={units()}
            sayState={sayOpen}
          />
        </div>
        <Show when={records().unread.length > 0}>
          <p data-unread>
            {said().unread(formatQuantity(records().unread.length, 'count', units(), words.locale))}
          </p>
        </Show>
        <p class="soft">{said().downloadHint}</p>
        <p aria-live="polite">
          <Show when={savedAs()}>{(name) => <strong>{said().downloaded(name())}</strong>}</Show>
        </p>
      </section>
      <PageActions>
        <BigButton act="bar" onPress={props.onBar}>
          {words.general.bar}
        </BigButton>
        <BigButton act="download-columns" onPress={downloadColumns}>
          {said().downloadColumns}
        </BigButton>
        <BigButton act="download-table" onPress={downloadTable}>
          {said().downloadTable}
        </BigButton>
        <BigButton kind="primary" act="download-day" onPress={download}>
          {said().download}
        </BigButton>
      </PageActions>
    </main>
  );
}
