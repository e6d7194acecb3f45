import { createMemo, For, Show } from 'solid-js';
import { readCovariates } from '../../../shared/judgement/chance/covariates';
import type { Chance } from '../../../shared/judgement/chance/estimate';
import { type Risk, risks } from '../../../shared/judgement/risk';
import { estimateLearnt } from '../../../shared/learning/learnt';
import type { Answers } from '../../../shared/records/forms/asked';
import type { Settings } from '../../../shared/records/settings';
import { formatQuantity } from '../../../shared/units/format';
import { Explain } from '../../parts/Explain';
import { useWords } from '../../parts/useWords';
import { findLearnt, useLearning } from '../taught/learningInUse';

/**
 * How likely strands like hers break, as one word; the odds, their band, whose strands say so and what weighs most behind
 * "Why?". By this station's own strands where they taught. How it is tested goes by its signs and by what is assumed:
 * where these ask for more care theirs is the word, where the strands do, that is said instead. Checked in
 * tests/src/screens/strandTest/chanceLine.test.tsx.
 */
export function ChanceLine(props: {
  readonly answers: Answers;
  /** What is assumed, which the risk goes by. */
  readonly assumed: Chance;
  readonly risk: Risk;
  readonly settings: Settings;
}) {
  const words = useWords();
  const said = () => words.chance;
  const learning = useLearning();
  const learnt = createMemo(() => findLearnt(learning, props.settings));
  const chance = createMemo(() => {
    const own = learnt();
    return own === null ? props.assumed : estimateLearnt(readCovariates(props.answers), own);
  });
  const isBySigns = () => props.risk !== props.assumed.word;
  const askStrandsMore = () => learnt() !== null && risks.indexOf(chance().word) > risks.indexOf(props.risk);
  const write = (share: number) =>
    formatQuantity(Math.round(share * 100), 'percent', props.settings.units, words.locale);
  const sayLine = () => {
    const { word } = chance();
    if (askStrandsMore()) return said().byStrands(word);
    if (word === props.risk) return said().line(word);
    return isBySigns() ? said().bySigns(props.risk) : said().byAssumed(props.risk);
  };
  const sayBasis = () => {
    const own = learnt();
    if (own !== null) {
      const strands = formatQuantity(own.strands, 'count', props.settings.units, words.locale);
      return said().basedOn(strands, write(props.assumed.chance));
    }
    const taught = learning?.taught();
    const isUnused = taught?.kind === 'taught' && taught.what.learnt.strands > 0;
    return isUnused ? said().notLearnt : said().noStrandsYet;
  };
  return (
    <div class="chance-line" data-chance={chance().word}>
      <p>{sayLine()}</p>
      <Explain title={said().title} act="explain-chance" asks={said().why}>
        <p data-line="odds">
          <strong>{said().odds(write(chance().chance), write(chance().low), write(chance().high))}</strong>
        </p>
        <p data-line="basis">{sayBasis()}</p>
        <Show when={learnt() !== null && chance().word !== props.risk}>
          <p data-line="by-strands">{said().strandsSay(chance().word)}</p>
        </Show>
        <Show when={learnt() === null && isBySigns()}>
          <p data-line="by-signs">{said().signsAskMore(props.assumed.word)}</p>
        </Show>
        <Show when={chance().reasons.length > 0} fallback={<p>{said().nothing}</p>}>
          <h3>{said().weighMost}</h3>
          <ol>
            <For each={chance().reasons}>
              {({ name, isBeyond }) => (
                <li data-weighs={name}>
                  {said().reasons[name]}
                  <Show when={isBeyond}> ({said().beyond})</Show>
                </li>
              )}
            </For>
          </ol>
        </Show>
        <p>{learnt() === null ? said().assumed : said().moved}</p>
        <p class="soft">{said().decides}</p>
      </Explain>
    </div>
  );
}
