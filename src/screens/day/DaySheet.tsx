import { For, Show } from 'solid-js';
import type { DayFindings } from '../../../shared/records/day/dayFindings';
import { type DayEntry, type DayRecords, listEntries } from '../../../shared/records/day/dayRecords';
import { formatQuantity } from '../../../shared/units/format';
import type { UnitSettings } from '../../../shared/units/quantity';
import { useInvented } from '../../parts/useInvented';
import { useWords } from '../../parts/useWords';
import { sayBottlesOf } from '../bottleAndBowl';
import './daySheet.css';
import { Findings } from './Findings';

type Entry = DayEntry;

/**
 * The day on paper, of whatever size the printer has: a line a client, its head on every page, and then what is looked at
 * again. Looked at on A4 and Letter in tests/browser/daySheet.test.ts.
 */
export function DaySheet(props: {
  readonly title: string;
  readonly records: DayRecords;
  readonly findings: DayFindings;
  readonly units: UnitSettings;
  readonly nowMs: number;
  readonly sayTime: (atMs: number) => string;
  /** How this one ended, or how it stands. */
  readonly sayState: (entry: Entry) => string;
}) {
  const words = useWords();
  const invented = useInvented();
  const said = () => words.day.sheet;
  const write = (count: number) => formatQuantity(count, 'count', props.units, words.locale);
  const sayService = ({ record }: Entry) => {
    const service = record.answers.client?.service;
    return service === undefined ? '' : words.asked.client.service.options[service];
  };
  const sayStrands = ({ record }: Entry) =>
    record.strands
      .map(({ zone, outcome }) =>
        outcome === null
          ? words.general.zones[zone]
          : `${words.general.zones[zone]} ${words.day.outcomeCount[outcome.grade]}`,
      )
      .join(', ');
  const sayDecision = ({ record }: Entry) =>
    record.decision === null ? '' : words.decision.decisions[record.decision.decision].name;
  const sayBowls = ({ record }: Entry) =>
    record.bowls
      .filter(({ state }) => state === 'rinsed' || state === 'on')
      .map((bowl) =>
        [words.general.zones[bowl.zone], bowl.line, sayBottlesOf(bowl, words, props.units)].join(' '),
      )
      .join(', ');
  const sayMissed = ({ record }: Entry) =>
    write(props.findings.missed.find(({ id }) => id === record.id)?.count ?? 0);
  const all = () => listEntries(props.records);
  const heads = () => [
    said().client,
    said().state,
    said().by,
    said().service,
    said().strands,
    said().decision,
    said().bowls,
    said().missed,
  ];
  return (
    <article class="day-sheet">
      <header>
        <h2>{props.title}</h2>
        <Show when={invented()}>{(kind) => <strong data-stamp={kind()}>{words[kind()].mark}</strong>}</Show>
        <p>{said().printed(words.moments.dayAndTime(props.nowMs))}</p>
      </header>
      <Show when={all().length > 0} fallback={<p>{words.day.nothingClosedThen}</p>}>
        <table>
          <thead>
            <tr>
              <For each={heads()}>{(head) => <th scope="col">{head}</th>}</For>
            </tr>
          </thead>
          <tbody>
            <For each={all()}>
              {(entry) => (
                <tr>
                  <th scope="row">{words.day.entry(entry.record.ticket, write(entry.record.chair))}</th>
                  <td>{props.sayState(entry)}</td>
                  <td>{entry.record.stylist}</td>
                  <td>{sayService(entry)}</td>
                  <td>{sayStrands(entry)}</td>
                  <td>{sayDecision(entry)}</td>
                  <td>{sayBowls(entry)}</td>
                  <td>{sayMissed(entry)}</td>
                </tr>
              )}
            </For>
          </tbody>
        </table>
      </Show>
      <div class="day-sheet-findings">
        <Findings findings={props.findings} units={props.units} sayTime={props.sayTime} />
      </div>
      <p class="day-sheet-signed">{said().signed}</p>
    </article>
  );
}
