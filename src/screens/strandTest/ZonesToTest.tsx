import { createMemo, For, Show } from 'solid-js';
import type { Zone } from '../../../shared/records/zones';
import { formatQuantity } from '../../../shared/units/format';
import { useWords } from '../../parts/useWords';
import type { StepProps } from '../stepProps';
import { HowCareful } from './HowCareful';
import type { PreparingView } from './viewPreparing';

/** Each zone of the plan, and how far its strand has come. */
export function ZonesToTest(props: Pick<StepProps, 'settings'> & { readonly view: PreparingView }) {
  const words = useWords();
  const write = (value: number, quantity: 'count' | 'level') =>
    formatQuantity(value, quantity, props.settings.units, words.locale);
  const names = createMemo(() => props.view.zones.map(({ zone }) => zone));
  const find = (name: Zone) => props.view.zones.find(({ zone }) => zone === name);
  return (
    <section class="panel">
      <h2>
        {words.strandTest.preparing.strandsTested(
          write(props.view.strandsTested, 'count'),
          write(props.view.strandsAsked, 'count'),
        )}
      </h2>
      <ul class="listed">
        <For each={names()}>
          {(name) => (
            <Show when={find(name)}>
              {(zone) => (
                <li data-zone={name} data-strand={zone().state}>
                  <strong>{words.general.zones[name]}</strong>
                  {': '}
                  {words.strandTest.preparing.states[zone().state]}
                  <Show when={zone().state === 'current' && zone().strand?.outcome}>
                    {(outcome) => (
                      <>
                        {': '}
                        {words.strandTest.preparing.testedBy(
                          words.strandTest.grades[outcome().grade],
                          outcome().level === undefined ? null : write(outcome().level ?? 0, 'level'),
                        )}
                      </>
                    )}
                  </Show>
                </li>
              )}
            </Show>
          )}
        </For>
      </ul>
      <Show when={props.view.incompatibility === null || props.view.incompatibility.state === 'clear'}>
        <HowCareful view={props.view} />
      </Show>
    </section>
  );
}
