import { createMemo, For, Show } from 'solid-js';
import type { Ingredient } from '../../../shared/chemistry/ingredients/ingredient';
import { formatQuantity } from '../../../shared/units/format';
import type { UnitSettings } from '../../../shared/units/quantity';
import { useWords } from '../../parts/useWords';
import { saySource } from '../../words/saySource';
import { sayFindings, sayMaker } from '../sayIngredients';

const once = (said: readonly string[]): readonly string[] => [...new Set(said)];

/** What was read of the list, and what that tells, each thing with its mark: live, while it is typed. */
export function ListReading(props: {
  readonly list: readonly Ingredient[];
  /** Something is typed that is no list: why stands at its field. */
  readonly isRefused: boolean;
  readonly makerSaysUpToC: number | undefined;
  readonly units: UnitSettings;
}) {
  const words = useWords();
  const said = () => words.ingredients;
  const write = (count: number) => formatQuantity(count, 'count', props.units, words.locale);
  const read = createMemo(() => {
    const find = (how: Ingredient['how']) => props.list.filter((each) => each.how === how);
    const corrected = once(find('corrected').map((each) => said().asMeant(each.asWritten, each.name)));
    const unknown = once(find('unknown').map(({ asWritten }) => asWritten));
    return said().reading([
      said().read(write(props.list.length)),
      ...(corrected.length === 0 ? [] : [said().corrected(write(corrected.length), said().names(corrected))]),
      ...(unknown.length === 0 ? [] : [said().unknown(write(unknown.length), said().names(unknown))]),
    ]);
  });
  /** How it was read stands in one line already. */
  const told = createMemo(() =>
    sayFindings(props.list, words, props.units).filter(
      ({ id }) => id !== 'nameCorrected' && id !== 'nameUnknown',
    ),
  );
  const maker = () => sayMaker(props.makerSaysUpToC, undefined, words, props.units);
  return (
    <section
      class="panel list-reading"
      data-panel="list-reading"
      aria-label={words.spray.tellsTitle}
      // It scrolls by itself beside what is typed: keys need to reach it.
      tabindex="0"
    >
      <h2>{words.spray.tellsTitle}</h2>
      <Show when={maker()}>{(claim) => <p data-line="maker">{claim().says}</p>}</Show>
      <Show
        when={props.list.length > 0}
        fallback={<p class="soft">{props.isRefused ? words.spray.notRead : words.spray.noListYet}</p>}
      >
        <p class="list-read" data-line="read" aria-live="polite">
          {read()}
        </p>
        <ul class="list-findings">
          <For each={told()}>
            {(finding) => (
              <li data-finding={finding.id}>
                {finding.says} {finding.more} <span class="mark">{saySource(finding.mark, words)}</span>
              </li>
            )}
          </For>
        </ul>
      </Show>
      <p class="soft">{words.spray.tellsOnly}</p>
    </section>
  );
}
