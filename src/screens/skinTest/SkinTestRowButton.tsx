import { useWords } from '../../parts/useWords';
import type { SkinTestRow } from './listSkinTests';
import { StatusRow } from './StatusRow';
import { sayPlace, sayStatus } from './skinTestSaid';

/** One skin test of the list: whose, since when and how; and what is to be done about it, and when. */
export function SkinTestRowButton(props: { readonly row: SkinTestRow; readonly onOpen: () => void }) {
  const words = useWords();
  const said = () => sayStatus(props.row, words);
  const test = () => props.row.test;
  return (
    <StatusRow
      data={{ 'data-test': test().id }}
      name={test().ticket}
      how={[
        words.skinTests.onSince(words.moments.shortDayAndTime(test().putOnAtMs)),
        sayPlace(test(), words),
      ]}
      status={props.row.status}
      what={said().what}
      when={said().when}
      onOpen={() => props.onOpen()}
    />
  );
}
