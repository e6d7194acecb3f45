import { createSignal, Show } from 'solid-js';
import { Caution } from '../../parts/Caution';
import { useWords } from '../../parts/useWords';
import type { NotNow } from './whyNotPractise';

/** What the settings need to know of practice: why it is not entered now, and the way in. */
export interface EnteringPractice {
  readonly notNow: () => NotNow | null;
  /** Answers whether it was entered; then the station starts anew. */
  readonly enter: () => Promise<boolean>;
}

/** The entering, for the page and for its button. */
export function createEntering(entering: () => EnteringPractice | undefined) {
  const [state, setState] = createSignal<'here' | 'entering' | 'failed'>('here');
  return {
    state,
    go: async () => {
      const way = entering();
      if (way === undefined || way.notNow() !== null) return;
      setState('entering');
      setState((await way.enter()) ? 'entering' : 'failed');
    },
  };
}

/** What practice is, that it is apart, and why it is not entered now. */
export function EnterPractice(props: { readonly notNow: NotNow | null; readonly hasFailed: boolean }) {
  const words = useWords();
  const said = () => words.practice;
  return (
    <section class="panel" data-panel="practice">
      <p>{said().enterWhat}</p>
      <p>{said().enterApart}</p>
      <Show when={props.notNow}>
        {(why) => (
          <Caution>
            <p role="status" data-not-now={why()}>
              {said().refused[why()]}
            </p>
          </Caution>
        )}
      </Show>
      <Show when={props.hasFailed}>
        <Caution>
          <p role="alert">{said().notEntered}</p>
        </Caution>
      </Show>
    </section>
  );
}
