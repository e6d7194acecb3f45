import { For, Show } from 'solid-js';
import type { FlagId } from '../../../machines/practice/lesson';
import type { Miss, TraineesTold } from '../../../machines/practice/tellTrainees';
import { type RedFlag, redFlags } from '../../../shared/judgement/risk';
import { type RuleId, ruleIds } from '../../../shared/judgement/rules';
import { useWords } from '../../parts/useWords';

const isRule = (id: FlagId): id is RuleId => ruleIds.some((rule) => rule === id);
const isRedFlag = (id: FlagId): id is RedFlag => redFlags.some((flag) => flag === id);

/** What is missed most, each with how often of how many. */
export function CommonMisses(props: {
  readonly told: TraineesTold;
  readonly write: (count: number) => string;
}) {
  const words = useWords();
  const said = () => words.trainer;
  const sayMiss = (miss: Miss): string => {
    if (miss.kind === 'failing') return words.practice.failedBy[miss.failing];
    const { id, why } = miss.flag;
    if (isRule(id)) return words.rules[id].what;
    return isRedFlag(id) ? said().redFlag(words.strandTest.flags[id]) : why;
  };
  return (
    <section class="panel common-misses" data-panel="misses">
      <h2>{said().misses}</h2>
      <Show when={props.told.misses.length > 0} fallback={<p>{said().nothingMissed}</p>}>
        <ol>
          <For each={props.told.misses}>
            {(miss) => (
              <li data-miss={miss.kind === 'flag' ? miss.flag.id : miss.failing}>
                <strong>{said().missOf(props.write(miss.missed), props.write(miss.of))}</strong>
                <span>{sayMiss(miss)}</span>
              </li>
            )}
          </For>
        </ol>
        <p>
          <Show when={props.told.furtherMisses > 0}>
            {said().further(props.write(props.told.furtherMisses))}{' '}
          </Show>
          {said().missesWhat}
        </p>
      </Show>
    </section>
  );
}
