import type { JSX } from 'solid-js';
import { Portal } from 'solid-js/web';
import './paper.css';

/** What paper gets, as long as its page is open: a print may be asked for by the tablet's own menu. */
export function Paper(props: {
  readonly page: 'strand-card' | 'hand-out' | 'day-sheet';
  readonly children: JSX.Element;
}) {
  return (
    <Portal>
      <div class="paper" data-paper={props.page}>
        {props.children}
      </div>
    </Portal>
  );
}
