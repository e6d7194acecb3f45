import { Show } from 'solid-js';
import { useMayWrite } from './useMayWrite';
import { useWords } from './useWords';

/** Why the buttons here are grey: this window does not write now. */
export function OnlyWatches() {
  const words = useWords();
  const mayWrite = useMayWrite();
  return (
    <Show when={!mayWrite()}>
      <p class="only-watches" data-line="only-watches">
        {words.windowPart.greyHere}
      </p>
    </Show>
  );
}
