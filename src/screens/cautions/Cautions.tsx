import { createSignal, For } from 'solid-js';
import {
  type CautionMoment,
  cautionMoments,
  listCautions,
  statedCautions,
} from '../../../shared/judgement/cautions';
import { BigButton } from '../../parts/BigButton';
import { useWords } from '../../parts/useWords';
import { saySource } from '../../words/saySource';
import './cautions.css';

/** Every caution there is, by the moment of the day at which it is heeded, each with where it stands. */
export function Cautions() {
  const words = useWords();
  const said = () => words.cautionList;
  const [when, setWhen] = createSignal<CautionMoment>('skinTest');
  return (
    <section class="panel" data-panel="cautions">
      <div class="caution-moments">
        <For each={cautionMoments}>
          {(moment) => (
            <BigButton
              act={`cautions-${moment}`}
              isWay
              isPressed={when() === moment}
              onPress={() => setWhen(moment)}
            >
              {said().moments[moment]}
            </BigButton>
          )}
        </For>
      </div>
      <ul class="caution-list">
        <For each={listCautions(when())}>
          {(id) => (
            <li data-stated={id}>
              <p>{said().all[id]}</p>
              <p class="soft">{saySource(statedCautions[id].source, words)}</p>
            </li>
          )}
        </For>
      </ul>
      <p class="soft">{said().note}</p>
    </section>
  );
}
