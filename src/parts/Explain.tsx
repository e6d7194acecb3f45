import { createSignal, type JSX } from 'solid-js';
import { Dialog } from './Dialog';
import './explain.css';
import { useWords } from './useWords';

/** A small "Why?" beside what was reckoned: it opens the reasons and where they come from. Open to a watcher too. */
export function Explain(props: {
  /** What is explained, as the title of what opens. */
  readonly title: string;
  /** Its own name, where two stand on one page. */
  readonly act?: string;
  /** What it asks in words of its own, there: instead of a second "Why?". */
  readonly asks?: string;
  readonly children: JSX.Element;
}) {
  const words = useWords();
  const [isOpen, setIsOpen] = createSignal(false);
  return (
    <>
      <button
        type="button"
        class="explain"
        data-act={props.act ?? 'explain'}
        aria-haspopup="dialog"
        aria-label={props.asks ?? words.general.whyOf(props.title)}
        onClick={() => setIsOpen(true)}
      >
        <svg class="explain-mark" viewBox="0 0 24 24" aria-hidden="true">
          <path d="M8 9 C8 4 16 4 16 9 C16 12 12 12 12 15 M12 18.5 V20" />
        </svg>
        {props.asks ?? words.general.why}
      </button>
      <Dialog isOpen={isOpen()} title={props.title} onClose={() => setIsOpen(false)}>
        {props.children}
      </Dialog>
    </>
  );
}
