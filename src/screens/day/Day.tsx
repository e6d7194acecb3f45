import { createMemo, createSignal, For, on, Show } from 'solid-js';
import type { FindSettings } from '../../../machines/consultation/replay';
import { findHoldsDay } from '../../../shared/records/holdsDay';
import { writeConsultationSchema } from '../../../shared/records/json/consultationSchema';
import { writeTableSchema } from '../../../shared/records/table/tableSchema';
import { formatQuantity } from '../../../shared/units/format';
import { BigButton } from '../../parts/BigButton';
import { PageActions } from '../../parts/PageActions';
import { Paper } from '../../parts/Paper';
import { useWords } from '../../parts/useWords';
import { listPastKeeping } from '../../station/keeping';
import type { StationState } from '../../station/stationState';
import '../layout.css';
import './day.css';
import { gatherFindings } from '../../../shared/records/day/dayFindings';
import { type DayEntry, type DayRecords, gatherDay } from '../../../shared/records/day/dayRecords';
import type { HandedFile } from '../../tablet/handOver';
import { HandOverWays } from '../handOver/HandOverWays';
import { usePass } from '../pin/pinInUse';
import { countBenchDue } from '../practice/bench/viewBench';
import { whyNotPrint } from '../strandCard/whyNotPrint';
import { createShownDays } from './createShownDays';
import { DaySheet } from './DaySheet';
import { DayWays } from './DayWays';
import { writeDay } from './dayFile';
import { type DayFile, nameDay, nameDayFile } from './dayNames';
import { findNoon } from './dayRange';
import { writeDayTable } from './dayTable';
import { EntryList } from './EntryList';
import { Findings } from './Findings';
import { saveText } from './saveText';

/** What closed today and what is still open; of an earlier day also what went on; and all of it as one file. */
export function Day(props: {
  readonly state: StationState;
  readonly nowMs: number;
  /** Nothing of the demo leaves this tablet without saying that it is one. */
  readonly isDemo: boolean;
  /** Which settings was a log judged under? They go along with it. */
  readonly readSettings: () => FindSettings;
  /** To what is kept of clients who have left, and for how long. */
  readonly onKept: () => void;
  /** To what the strands of this station taught. */
  readonly onTaught: () => void;
  /** To what a press does, tried out on nobody's hair. */
  readonly onPressPage: () => void;
  /** To the trials at the bench. */
  readonly onBench: () => void;
  readonly onBar: () => void;
}) {
  const words = useWords();
  const said = () => words.day;
  const [savedAs, setSavedAs] = createSignal<string | null>(null);
  const days = createShownDays(() => props.nowMs);
  const { shown, isUpToToday, isOneDay } = days;
  const gather = () => gatherDay(props.state, props.nowMs, shown());
  /** Once for each entry that is written and each day that begins, not every second. */
  const records = createMemo(on([shown, () => props.state], gather));
  const findings = createMemo(on(records, (each) => gatherFindings(each, props.nowMs)));
  const sayDay = (name: string) => words.moments.shortDay(findNoon(name));
  const title = () => {
    const { from, day: last } = shown();
    if (!isOneDay()) return said().titleFromTo(sayDay(from), sayDay(last));
    return isUpToToday() ? said().title : said().titleOf(sayDay(last));
  };
  const sayTime = (atMs: number) =>
    isOneDay() ? words.moments.time(atMs) : words.moments.shortDayAndTime(atMs);
  /** By when its records closed: no log is looked into. */
  const findFirstDay = () => {
    const ended = props.state.closed.map(({ endedAtMs }) => endedAtMs);
    return ended.length === 0 ? null : nameDay(ended.reduce((one, other) => Math.min(one, other)));
  };
  const write = (count: number) => formatQuantity(count, 'count', units(), words.locale);
  /** Reckoned once a day, not every second. */
  const pastCount = createMemo(
    on([days.today, () => props.state], () => {
      const past = listPastKeeping(props.state, props.nowMs);
      return past.closed.length + past.skinTests.length;
    }),
  );
  const sayKept = () => {
    if (props.state.erasings.unfinished > 0) return words.kept.wayUnfinished;
    return pastCount() === 0 ? words.kept.way : words.kept.wayPast(write(pastCount()));
  };
  const sayBench = () => {
    const due = countBenchDue(props.state.bench, props.nowMs);
    return due === 0 ? words.bench.way : words.bench.wayDue(write(due));
  };
  const isToday = () => isUpToToday() && isOneDay();
  const units = () => props.state.settings.settings.units;
  /** Of this moment; its text is made when it is taken. */
  const makeFile = (kind: DayFile, write: (today: DayRecords) => Iterable<string>): HandedFile => {
    const today = gather();
    const type = kind === 'csv' ? 'text/csv' : 'application/json';
    return { name: nameDayFile(today, props.isDemo, kind), type, text: () => write(today) };
  };
  const makeRecords = () =>
    makeFile('json', (today) =>
      writeDay(today, props.readSettings(), { madeAtMs: props.nowMs, isDemo: props.isDemo }),
    );
  const makeTable = () => makeFile('csv', (today) => writeDayTable(today, units()));
  const makeColumns = () => makeFile('csv.schema.json', () => [writeTableSchema(units())]);
  const makeSchema = () => makeFile('json.schema.json', () => [writeConsultationSchema()]);
  /** What can be shared best comes first. */
  const listFiles = () => [makeTable(), makeRecords()];
  const pass = usePass();
  const download = (make: () => HandedFile) => pass(() => void save(make()));
  const save = async (file: HandedFile) => {
    setSavedAs(null);
    await saveText(file.name, file.text(), file.type);
    setSavedAs(file.name);
  };
  const sayEnded = ({ how, endedAtMs }: DayRecords['closed'][number]) =>
    said().endedAt(said().endings[how], sayTime(endedAtMs));
  const sayOpen = ({ record }: DayRecords['open'][number]) => {
    const holds = findHoldsDay(record);
    if (holds !== null) return said().holds[holds];
    return record.parked === null ? said().carriesOver : said().parked;
  };

  /** Of an earlier day: how it ended after it, and when, or how it stands now. */
  const sayGoneOn = ({ record: { ended, parked } }: DayEntry) =>
    ended === null
      ? parked === null
        ? said().openNow
        : said().parked
      : said().endedAt(said().endings[ended.how], words.moments.shortDay(ended.atMs));
  const whyNot = createMemo(() => whyNotPrint([...props.state.open.values()], props.nowMs, words, units()));
  const sayEntry = (entry: DayEntry) => {
    if ('how' in entry) return sayEnded(entry as DayRecords['closed'][number]);
    return records().goneOn.includes(entry) ? sayGoneOn(entry) : sayOpen(entry);
  };

  return (
    <main class="day-page" data-step="day">
      <header>
        <h1>{title()}</h1>
        <DayWays
          days={days}
          findFirstDay={findFirstDay}
          units={units()}
          kept={sayKept()}
          onKept={props.onKept}
          onTaught={props.onTaught}
          onPressPage={props.onPressPage}
          bench={sayBench()}
          onBench={props.onBench}
        />
        <p class="day-endings" data-endings>
          <For each={findings().endings}>
            {({ how, count }) => (
              <span>{said().endingCount(how, formatQuantity(count, 'count', units(), words.locale))}</span>
            )}
          </For>
        </p>
      </header>
      <section class="day-content" aria-label={title()} tabindex="0">
        <div class="day-columns">
          <Show when={isUpToToday()}>
            <EntryList
              panel="open"
              title={said().open}
              empty={said().nothingOpen}
              entries={records().open}
              units={units()}
              sayState={sayOpen}
            />
          </Show>
          <EntryList
            panel="closed"
            title={isToday() ? said().closed : said().closedThen}
            empty={isToday() ? said().nothingClosed : said().nothingClosedThen}
            entries={records().closed}
            units={units()}
            sayState={sayEnded}
          />
          <Show when={records().goneOn.length > 0}>
            <EntryList
              panel="gone-on"
              title={said().goneOn}
              empty=""
              entries={records().goneOn}
              units={units()}
              sayState={sayGoneOn}
            />
          </Show>
          <Findings findings={findings()} units={units()} sayTime={sayTime} />
        </div>
        <Show when={records().unread.length > 0}>
          <p data-unread>
            {said().unread(formatQuantity(records().unread.length, 'count', units(), words.locale))}
          </p>
        </Show>
        <p class="soft">{said().downloadHint}</p>
        <div class="day-which">
          <button
            type="button"
            class="sheet-way"
            data-act="download-columns"
            onClick={() => download(makeColumns)}
          >
            {said().downloadColumns}
          </button>
          <button
            type="button"
            class="sheet-way"
            data-act="download-schema"
            onClick={() => download(makeSchema)}
          >
            {said().downloadSchema}
          </button>
          <HandOverWays files={listFiles} />
        </div>
        <Show when={whyNot()}>{(why) => <p class="soft">{why()}</p>}</Show>
        <p aria-live="polite">
          <Show when={savedAs()}>{(name) => <strong>{said().downloaded(name())}</strong>}</Show>
        </p>
      </section>
      <PageActions>
        <BigButton act="bar" onPress={props.onBar}>
          {words.general.bar}
        </BigButton>
        <BigButton act="print-day" isDisabled={whyNot() !== null} onPress={() => pass(() => window.print())}>
          {said().print}
        </BigButton>
        <BigButton act="download-table" onPress={() => download(makeTable)}>
          {said().downloadTable}
        </BigButton>
        <BigButton kind="primary" act="download-day" onPress={() => download(makeRecords)}>
          {said().download}
        </BigButton>
      </PageActions>
      <Paper page="day-sheet">
        <DaySheet
          title={title()}
          records={records()}
          findings={findings()}
          units={units()}
          nowMs={props.nowMs}
          sayTime={sayTime}
          sayState={sayEntry}
        />
      </Paper>
    </main>
  );
}
