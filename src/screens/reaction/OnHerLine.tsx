import { Index, Show } from 'solid-js';
import { useWords } from '../../parts/useWords';
import './reaction.css';
import { type ReactionView, sayOnFor } from './viewReaction';

/** In one line, while something else is asked: what is on and for how long, and for how long water runs. */
export function OnHerLine(props: { readonly view: ReactionView }) {
  const words = useWords();
  const said = () => words.reaction;
  return (
    <Show when={props.view.contacts.length + props.view.waters.length > 0}>
      <p class="on-her-line">
        <Index each={props.view.contacts}>
          {(contact) => (
            <span>
              {said().onFor(words.general.zones[contact().zone])}{' '}
              <strong>{sayOnFor(contact().onForMs)}</strong>
            </span>
          )}
        </Index>
        <Index each={props.view.waters}>
          {(water) => (
            <span>
              {said().waterRuns(words.general.zones[water().zone])}{' '}
              <strong>{sayOnFor(water().runsForMs)}</strong>
            </span>
          )}
        </Index>
      </p>
    </Show>
  );
}
