import { For } from 'solid-js';
import { BigButton } from '../../parts/BigButton';
import { useWords } from '../../parts/useWords';
import { sayAbout } from '../map/saySizes';
import type { StepProps } from '../stepProps';
import { findCutCm } from './findCutCm';
import type { DecisionView } from './viewDecision';

/** It was decided to cut first: how much, and what comes after the scissors. */
export function CutFirst(
  props: Pick<StepProps, 'consultation' | 'settings'> & {
    readonly view: DecisionView;
    readonly onOtherwise: () => void;
  },
) {
  const words = useWords();
  const said = () => words.decision.cut;
  const sayHowMuch = () => {
    const cm = findCutCm(props.view.found, props.consultation.record.answers);
    return cm === null ? said().beyondTrim : said().howMuch(sayAbout(cm, props.settings.units, words.locale));
  };
  return (
    <section class="panel cut-first" data-panel="cut-first">
      <h2 data-line="how-much">{sayHowMuch()}</h2>
      <ol>
        <For each={said().after}>{(line) => <li>{line}</li>}</For>
      </ol>
      <BigButton kind="quiet" act="decide-otherwise" onPress={props.onOtherwise}>
        {said().otherwise}
      </BigButton>
    </section>
  );
}
