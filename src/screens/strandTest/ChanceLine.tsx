import { For, Show } from 'solid-js';
import type { Chance } from '../../../shared/judgement/chance/estimate';
import type { Risk } from '../../../shared/judgement/risk';
import type { Settings } from '../../../shared/records/settings';
import { formatQuantity } from '../../../shared/units/format';
import { Explain } from '../../parts/Explain';
import { useWords } from '../../parts/useWords';

/**
 * How likely strands like hers break, as one word; the odds, their band and what weighs most behind "Why?".
 * Where the signs ask for more care than the chance does, theirs is the word. Checked in tests/src/screens/strandTest/chanceLine.test.tsx.
 */
export function ChanceLine(props: {
  readonly chance: Chance;
  readonly risk: Risk;
  readonly settings: Settings;
}) {
  const words = useWords();
  const said = () => words.chance;
  const isBySigns = () => props.risk !== props.chance.word;
  const write = (share: number) =>
    formatQuantity(Math.round(share * 100), 'percent', props.settings.units, words.locale);
  return (
    <div class="chance-line" data-chance={props.chance.word}>
      <p>{isBySigns() ? said().bySigns(props.risk) : said().line(props.chance.word)}</p>
      <Explain title={said().title} act="explain-chance" asks={said().why}>
        <p data-line="odds">
          <strong>
            {said().odds(write(props.chance.chance), write(props.chance.low), write(props.chance.high))}
          </strong>
        </p>
        <Show when={isBySigns()}>
          <p data-line="by-signs">{said().signsAskMore(props.chance.word)}</p>
        </Show>
        <Show when={props.chance.reasons.length > 0} fallback={<p>{said().nothing}</p>}>
          <h3>{said().weighMost}</h3>
          <ol>
            <For each={props.chance.reasons}>
              {({ name, isBeyond }) => (
                <li data-weighs={name}>
                  {said().reasons[name]}
                  <Show when={isBeyond}> ({said().beyond})</Show>
                </li>
              )}
            </For>
          </ol>
        </Show>
        <p>{said().assumed}</p>
        <p class="soft">{said().decides}</p>
      </Explain>
    </div>
  );
}
