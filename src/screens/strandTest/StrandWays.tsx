import { Show } from 'solid-js';
import { BigButton } from '../../parts/BigButton';
import { useWords } from '../../parts/useWords';

/** The ways out of a page of one strand that record nothing of it: back, and putting it aside; each where there is one. */
export function StrandWays(props: {
  readonly onClose?: (() => void) | undefined;
  readonly onDiscard?: (() => void) | null | undefined;
}) {
  const words = useWords();
  return (
    <>
      <Show when={props.onClose}>
        {(close) => (
          <BigButton act="cancel" onPress={close()}>
            {words.general.back}
          </BigButton>
        )}
      </Show>
      <Show when={props.onDiscard}>
        {(discard) => (
          <BigButton act="discard-strand" onPress={discard()}>
            {words.strandTest.processing.discard}
          </BigButton>
        )}
      </Show>
    </>
  );
}
