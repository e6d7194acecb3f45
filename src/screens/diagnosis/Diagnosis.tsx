import { createResource, For, Show } from 'solid-js';
import { formatQuantity } from '../../../shared/units/format';
import type { UnitSettings } from '../../../shared/units/quantity';
import { BigButton } from '../../parts/BigButton';
import { useWords } from '../../parts/useWords';
import type { StationInUse } from '../../station/createStation';
import type { TabletInUse } from '../../tablet/createTablet';
import type { TabletFactsInUse } from '../../tablet/createTabletFacts';
import { viewClockDoubt } from '../clockDoubt/viewClockDoubt';
import { nameDay } from '../day/dayNames';
import { saveText } from '../day/saveText';
import { HandOverWays } from '../handOver/HandOverWays';
import { useUpdates } from '../update/updatesInUse';
import './diagnosis.css';
import { listFindings } from './listFindings';
import { writeSupportFile } from './supportFile';
import { gatherTold } from './told';

/** Is this tablet in order? Line by line, with what to do, and a file to send to whoever looks after it. */
export function Diagnosis(props: {
  readonly station: Pick<StationInUse, 'examine' | 'state' | 'nowMs' | 'seenMs' | 'jumps'>;
  readonly tablet: TabletInUse | undefined;
  readonly facts: TabletFactsInUse;
  readonly units: UnitSettings;
}) {
  const words = useWords();
  const said = () => words.diagnosis;
  const updates = useUpdates();
  const write = (count: number) => formatQuantity(count, 'count', props.units, words.locale);
  const [read, { refetch }] = createResource(async () => ({
    facts: await props.facts.read(),
    examined: await props.station.examine(),
  }));
  const told = () => {
    const now = read.latest;
    if (now === undefined) return null;
    const { station } = props;
    return gatherTold({
      ...now,
      atMs: station.nowMs(),
      lastBackupAtMs: props.facts.lastBackupAtMs(),
      behindMs: viewClockDoubt(station.state(), station.nowMs(), station.seenMs())?.behindMs ?? 0,
      state: station.state(),
      tablet: props.tablet,
      updates,
      jumps: station.jumps(),
    });
  };
  const findings = () => {
    const now = told();
    if (now === null) return [];
    // What is to be seen to comes first.
    return [...listFindings(now, words, write)].sort(
      (one, other) => Number(one.todo === null) - Number(other.todo === null),
    );
  };
  const toSee = () => findings().filter(({ todo }) => todo !== null).length;
  const file = () => {
    const now = told();
    return {
      name: `strandproof-support-${nameDay(props.station.nowMs())}.json`,
      type: 'application/json',
      text: () => (now === null ? '' : writeSupportFile(now)),
    };
  };
  const save = () => {
    const { name, type, text } = file();
    void saveText(name, text(), type);
  };
  return (
    <Show when={told() !== null} fallback={<p role="status">{said().reading}</p>}>
      <div class="diagnosis-head">
        <p role="status" data-to-see={toSee()}>
          <strong>{toSee() === 0 ? said().allWell : said().toSee(write(toSee()))}</strong>
        </p>
        <BigButton act="look-again" isWay onPress={() => void refetch()}>
          {said().again}
        </BigButton>
      </div>
      <ul class="diagnosis">
        <For each={findings()}>
          {({ topic, says, todo }) => (
            <li data-topic={topic} data-finding={todo === null ? 'good' : 'look'}>
              <span class="diagnosis-mark">{todo === null ? said().good : said().look}</span>
              <h2>{said().topics[topic]}</h2>
              <div>
                <p>{says}</p>
                <Show when={todo}>{(what) => <p class="diagnosis-todo">{what()}</p>}</Show>
              </div>
            </li>
          )}
        </For>
      </ul>
      <section class="panel" data-panel="support">
        <p>{said().support.hint}</p>
        <BigButton act="save-support" isWay onPress={save}>
          {said().support.save}
        </BigButton>
        <HandOverWays files={() => [file()]} />
      </section>
    </Show>
  );
}
