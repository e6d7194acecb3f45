import { For, type JSX, Show } from 'solid-js';
import {
  type Broken,
  type DayFindings,
  isOftenLifted,
  type Late,
  type Told,
} from '../../../shared/records/day/dayFindings';
import { formatCountdown, formatQuantity } from '../../../shared/units/format';
import type { UnitSettings } from '../../../shared/units/quantity';
import { useWords } from '../../parts/useWords';

/** What of the day is looked at again: hair that gave way, reactions told, stops that were lifted and by whom. */
export function Findings(props: {
  readonly findings: DayFindings;
  readonly units: UnitSettings;
  /** When, with its day where there are several. */
  readonly sayTime: (atMs: number) => string;
}) {
  const words = useWords();
  const said = () => words.day;
  const write = (count: number) => formatQuantity(count, 'count', props.units, words.locale);
  const time = (atMs: number) => props.sayTime(atMs);
  const saySigns = (signs: readonly string[]) => {
    const known: Readonly<Record<string, string>> = words.reaction.signs.options;
    return signs.map((sign) => known[sign] ?? sign).join(', ');
  };
  const sayCame = ({ came }: Told) => {
    if (came.of === 'recorded') return said().toldRecorded(saySigns(came.signs));
    if (came.of === 'open') return said().toldOpen;
    const reasons: Readonly<Record<string, string>> = words.reaction.none.options;
    return said().toldNone(came.by, time(came.atMs), reasons[came.why] ?? came.why);
  };
  const sayClock = ({ kind, zone }: Late) =>
    said().lateBy(kind === 'head' ? 'head' : 'strand', zone === null ? '' : words.general.zones[zone]);
  const sayHair = ({ ticket, strand, zone }: Broken) => {
    const name = words.general.zones[zone];
    return strand === null ? said().onHeadOf(ticket, name) : said().strandOf(ticket, write(strand), name);
  };
  const codes: () => Readonly<Record<string, string>> = () => words.strandTest.forms.override.code.options;

  return (
    <>
      <Panel
        panel="outcomes"
        title={said().outcomes}
        empty={said().nothingTested}
        count={props.findings.outcomes.length}
      >
        <li>
          {props.findings.outcomes
            .map(({ grade, count }) => `${said().outcomeCount[grade]} ${write(count)}`)
            .join(' · ')}
        </li>
      </Panel>
      <Panel panel="late" title={said().late} empty={said().nothingLate} count={props.findings.late.length}>
        <For each={props.findings.late}>
          {(late) => (
            <li>
              <strong>{said().lateOf(late.ticket, sayClock(late))}</strong> {formatCountdown(-late.overMs)}
            </li>
          )}
        </For>
      </Panel>
      <Panel
        panel="missed"
        title={said().missed}
        empty={said().nothingMissed}
        count={props.findings.missed.length}
      >
        <li>{props.findings.missed.map(({ ticket, count }) => `${ticket} ${write(count)}`).join(' · ')}</li>
      </Panel>
      <Panel
        panel="broken"
        title={said().broken}
        empty={said().nothingBroken}
        count={props.findings.broken.length}
      >
        <For each={props.findings.broken}>
          {(strand) => (
            <li>
              <strong>{sayHair(strand)}</strong>{' '}
              {[said().gaveWay[strand.how], time(strand.atMs), strand.mix.line].join(' · ')}
            </li>
          )}
        </For>
      </Panel>
      <Panel panel="told" title={said().told} empty={said().nothingTold} count={props.findings.told.length}>
        <For each={props.findings.told}>
          {(told) => (
            <li data-came={told.came.of}>
              <strong>{said().toldAt(told.ticket, time(told.atMs), told.by)}</strong> {sayCame(told)}
            </li>
          )}
        </For>
      </Panel>
      <Panel
        panel="lifted"
        title={said().lifted}
        empty={said().nothingLifted}
        count={props.findings.lifted.length}
      >
        <For each={props.findings.rules.filter(({ lifted }) => lifted > 0)}>
          {(count) => (
            <li data-rule={count.rule}>
              <strong>{words.rules[count.rule].what}</strong>{' '}
              {said().liftedOf(write(count.lifted), write(count.stopped))}
              <Show when={isOftenLifted(count)}> {said().badlyWritten}</Show>
            </li>
          )}
        </For>
        <For each={props.findings.lifted}>
          {(lift) => (
            <li data-lifted={lift.rule}>
              <strong>{said().liftedFor(lift.ticket, lift.by, time(lift.atMs))}</strong>{' '}
              {[words.rules[lift.rule].what, codes()[lift.code] ?? lift.code, `“${lift.words}”`].join(' · ')}
            </li>
          )}
        </For>
      </Panel>
    </>
  );
}

function Panel(props: {
  readonly panel: string;
  readonly title: string;
  readonly empty: string;
  readonly count: number;
  readonly children: JSX.Element;
}) {
  return (
    <section class="panel" data-panel={props.panel}>
      <h2>{props.title}</h2>
      <Show when={props.count > 0} fallback={<p>{props.empty}</p>}>
        <ul class="listed">{props.children}</ul>
      </Show>
    </section>
  );
}
