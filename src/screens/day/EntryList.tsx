import { createMemo, For, type JSX, Show } from 'solid-js';
import type { DayRecords } from '../../../shared/records/day/dayRecords';
import { formatQuantity } from '../../../shared/units/format';
import type { UnitSettings } from '../../../shared/units/quantity';
import { useWords } from '../../parts/useWords';

type Entry = DayRecords['open'][number];

/** Consultations of the day under one heading: whose, how each stands, and what was made. By id, so that none is made anew. */
export function EntryList<E extends Entry>(props: {
  readonly panel: string;
  readonly title: string;
  /** Said where there is none. */
  readonly empty: string;
  readonly entries: readonly E[];
  readonly units: UnitSettings;
  /** How it ended, or how it stands. */
  readonly sayState: (entry: E) => string;
}): JSX.Element {
  const words = useWords();
  const said = () => words.day;
  const ids = createMemo(() => props.entries.map(({ record }) => record.id));
  const find = (id: string) => props.entries.find(({ record }) => record.id === id);
  const write = (value: number) => formatQuantity(value, 'count', props.units, words.locale);
  const sayContents = (entry: E) =>
    [
      props.sayState(entry),
      said().strands(write(entry.record.strands.length)),
      said().bowls(write(entry.record.bowls.length)),
    ]
      .filter((part) => part !== '')
      .join(' · ');
  return (
    <section class="panel" data-panel={props.panel}>
      <h2>{props.title}</h2>
      <Show when={ids().length > 0} fallback={<p>{props.empty}</p>}>
        <ul class="listed">
          <For each={ids()}>
            {(id) => (
              <li data-record={id}>
                <Show when={find(id)}>
                  {(entry) => (
                    <>
                      <strong>{said().entry(entry().record.ticket, write(entry().record.chair))}</strong>{' '}
                      {sayContents(entry())}
                    </>
                  )}
                </Show>
              </li>
            )}
          </For>
        </ul>
      </Show>
    </section>
  );
}
