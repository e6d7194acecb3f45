import { For, Show } from 'solid-js';
import { formatQuantity } from '../../../shared/units/format';
import { useWords } from '../../parts/useWords';
import type { DebriefPart } from './DebriefPage';

/** What was decided against what the truth would have asked. */
export function DebriefDecision(props: DebriefPart) {
  const words = useWords();
  const said = () => words.practice;
  const name = (decision: keyof typeof words.decision.decisions) => words.decision.decisions[decision].name;
  const part = () => props.told.decision;
  const level = (depth: number) => formatQuantity(depth, 'level', props.settings.units, words.locale);
  return (
    <section class="panel" data-panel="decision" data-right={part().isRight}>
      <h2>{said().decisionTitle}</h2>
      <Show when={part().decided} fallback={<p>{said().nothingDecided}</p>}>
        {(decided) => <p>{said().decided(name(decided()))}</p>}
      </Show>
      <p>
        <strong>{said().right(part().right.map(name).join(', '))}</strong>
      </p>
      <p>{said().wouldSuggest(name(part().suggested))}</p>
      <Show when={part().stops.length > 0}>
        <p>
          {said().trueStops(
            part()
              .stops.map((rule) => words.rules[rule].what)
              .join('; '),
          )}
        </p>
      </Show>
      <For each={props.told.comesLater}>
        {({ rule, how }) => (
          <p data-comes-later={rule}>
            {words.rules[rule].what}: {said().comesLater[how]}
          </p>
        )}
      </For>
      <For each={props.told.mixFaults}>
        {({ zone, fault }) => (
          <p data-mix-fault={fault}>{said().mixFaultOf(words.general.zones[zone], said().mixFault[fault])}</p>
        )}
      </For>
      <For each={props.told.overshot}>
        {({ of, zone, level: seen, target }) => (
          <p data-overshot={of}>
            {said().overshot(said().lookOf[of], words.general.zones[zone], level(seen), level(target))}
          </p>
        )}
      </For>
    </section>
  );
}
