import { createMemo, For, Show } from 'solid-js';
import { findShortTime } from '../../../shared/judgement/shortTime';
import type { Zone } from '../../../shared/records/zones';
import { formatQuantity } from '../../../shared/units/format';
import { useWords } from '../../parts/useWords';
import { saySnip } from '../map/sayHair';
import type { HairView } from '../map/viewHair';
import type { StepProps } from '../stepProps';
import { HowCareful } from './HowCareful';
import { sayOfPlanned } from './sayShortTime';
import type { PreparingView } from './viewPreparing';

/** Each zone of the plan, and how far its strand has come. */
export function ZonesToTest(
  props: Pick<StepProps, 'settings'> & {
    readonly view: PreparingView;
    readonly hair: HairView;
    /** Until the glass is read nothing else is said of how it is tested. */
    readonly isGlassAsked: boolean;
    /** Below the map there is more room for how carefully it is tested. */
    readonly isMapShown: boolean;
  },
) {
  const words = useWords();
  const write = (value: number, quantity: 'count' | 'level') =>
    formatQuantity(value, quantity, props.settings.units, words.locale);
  const names = createMemo(() => props.view.zones.map(({ zone }) => zone));
  const listSnips = (name: Zone) => props.hair.snips.filter(({ zone }) => zone === name);
  const find = (name: Zone) => props.view.zones.find(({ zone }) => zone === name);
  return (
    <section class="panel">
      <h2>
        {words.strandTest.preparing.strandsTested(
          write(props.view.strandsTested, 'count'),
          write(props.view.strandsAsked, 'count'),
        )}
      </h2>
      <Show when={props.view.another}>
        {(one) => (
          <p data-line="another">
            {words.strandTest.preparing.another(
              words.general.zones[one().zone],
              words.hair.places[one().place],
            )}
          </p>
        )}
      </Show>
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
                  <Show when={zone().state === 'current' && zone().strand} keyed>
                    {(strand) => (
                      <Show when={findShortTime(strand) !== null}>
                        {', '}
                        <strong data-line="short-time">
                          {words.strandTest.preparing.shortBy(
                            sayOfPlanned(strand, words, props.settings.units),
                          )}
                        </strong>
                      </Show>
                    )}
                  </Show>
                  <For each={zone().state === 'current' ? [] : listSnips(name)}>
                    {(snip) => (
                      <span class="soft" data-line="snip">
                        {words.hair.said.snip(
                          write(props.hair.snips.indexOf(snip) + 1, 'count'),
                          saySnip(snip, words, props.settings.units),
                        )}
                      </span>
                    )}
                  </For>
                </li>
              )}
            </Show>
          )}
        </For>
      </ul>
      <Show when={!props.isGlassAsked}>
        <div class="how-careful">
          <p data-kind={props.view.kind}>
            {words.strandTest.kinds[props.view.kind]}{' '}
            <span class="soft">{words.strandTest.preparing.estimate}</span>
          </p>
          <Show when={!props.isMapShown}>
            <HowCareful view={props.view} units={props.settings.units} />
          </Show>
        </div>
      </Show>
    </section>
  );
}
