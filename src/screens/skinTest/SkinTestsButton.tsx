import { createMemo } from 'solid-js';
import type { Settings } from '../../../shared/records/settings';
import type { SkinTest } from '../../../shared/records/skinTest/skinTest';
import { formatQuantity } from '../../../shared/units/format';
import { BigButton } from '../../parts/BigButton';
import { useWords } from '../../parts/useWords';
import { countSkinTests, listSkinTests } from './listSkinTests';

/** The way from the bar to the skin tests: how many are on, and how many may be read now. It holds no lane. */
export function SkinTestsButton(props: {
  readonly skinTests: readonly SkinTest[];
  readonly settings: Settings;
  readonly nowMs: number;
  readonly onOpen: () => void;
}) {
  const words = useWords();
  const write = (count: number) => formatQuantity(count, 'count', props.settings.units, words.locale);
  const counted = createMemo(() =>
    countSkinTests(listSkinTests(props.skinTests, props.settings.profile, props.nowMs)),
  );
  const say = () => {
    const { on, due } = counted();
    return due === 0 ? words.skinTests.way(write(on)) : words.skinTests.wayDue(write(on), write(due));
  };
  return (
    <BigButton
      kind={counted().due > 0 ? 'attention' : 'quiet'}
      act="skin-tests"
      onPress={() => props.onOpen()}
    >
      {say()}
    </BigButton>
  );
}
