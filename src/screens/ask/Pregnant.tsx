import { createSignal, For } from 'solid-js';
import { BigButton } from '../../parts/BigButton';
import { Dialog } from '../../parts/Dialog';
import { useWords } from '../../parts/useWords';
import '../cautions/cautions.css';

/** What one says to her who is pregnant: advice to read aloud, never a block. Nothing of it is kept, not even the asking. */
export function Pregnant() {
  const words = useWords();
  const said = () => words.cautionList.pregnant;
  const [isOpen, setIsOpen] = createSignal(false);
  return (
    <>
      <BigButton kind="quiet" act="pregnant" isWay onPress={() => setIsOpen(true)}>
        {said().open}
      </BigButton>
      <Dialog isOpen={isOpen()} title={said().title} onClose={() => setIsOpen(false)}>
        <ul class="pregnant-said">
          <For each={said().lines}>{(line) => <li>{line}</li>}</For>
        </ul>
        <p class="soft">{said().source}</p>
      </Dialog>
    </>
  );
}
