import { Show } from 'solid-js';
import type { RawForm } from '../../../shared/records/readForm';
import { useWords } from '../../parts/useWords';

/** From the row of a spray to its page: is its list kept yet? */
export function SprayWay(props: { readonly row: RawForm; readonly onOpen: () => void }) {
  const words = useWords();
  const isKept = () => typeof props.row.ingredients === 'string' && props.row.ingredients.trim() !== '';
  return (
    <Show when={props.row.kind === 'spray'}>
      <button type="button" class="option open-spray" data-act="open-spray" onClick={() => props.onOpen()}>
        {isKept() ? words.spray.open : words.spray.openEmpty}
      </button>
    </Show>
  );
}
