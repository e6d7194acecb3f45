import { Show } from 'solid-js';
import { type ClosedRecord, parseClosedLog } from '../../../shared/records/closedRecord';
import { useWords } from '../../parts/useWords';

/** Whose ticket it was, as its first entry says. */
const findTicket = (closed: ClosedRecord): string => {
  const first = parseClosedLog(closed)?.[0];
  return first?.type === 'OPENED' ? first.payload.ticket : '';
};

/** Says that the client in view has just been closed, and how. */
export function Ended(props: { readonly closed: ClosedRecord | undefined }) {
  const words = useWords();
  return (
    <Show when={props.closed}>
      {(closed) => (
        <p class="ended-said" role="status" data-ended={closed().how}>
          {words.bar.ended(findTicket(closed()), words.bar.endings[closed().how])}
        </p>
      )}
    </Show>
  );
}
