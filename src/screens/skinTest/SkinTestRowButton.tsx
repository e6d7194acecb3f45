import { useWords } from '../../parts/useWords';
import type { SkinTestRow } from './listSkinTests';
import { StatusMark } from './StatusMark';
import { sayPlace, sayStatus } from './skinTestSaid';

/** One skin test of the list: whose, since when and how; and what is to be done about it, and when. */
export function SkinTestRowButton(props: { readonly row: SkinTestRow; readonly onOpen: () => void }) {
  const words = useWords();
  const said = () => sayStatus(props.row, words);
  return (
    <li>
      <button
        type="button"
        class="skin-test-row"
        data-test={props.row.test.id}
        data-status={props.row.status}
        onClick={() => props.onOpen()}
      >
        <span class="skin-test-who">
          <span class="skin-test-ticket">{props.row.test.ticket}</span>
          <span class="skin-test-how">
            {words.skinTests.onSince(words.moments.shortDayAndTime(props.row.test.putOnAtMs))}
          </span>
          <span class="skin-test-how">{sayPlace(props.row.test, words)}</span>
        </span>
        <span class="skin-test-status">
          <span class="skin-test-what">
            <StatusMark status={props.row.status} /> {said().what}
          </span>
          <span>{said().when}</span>
        </span>
      </button>
    </li>
  );
}
