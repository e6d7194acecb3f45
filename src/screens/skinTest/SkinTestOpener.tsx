import { createMemo } from 'solid-js';
import { BigButton } from '../../parts/BigButton';
import { useWords } from '../../parts/useWords';
import type { StepProps } from '../stepProps';
import './skinTest.css';
import { saySkinTest } from './skinTestSaid';
import { viewSkinTest } from './skinTestView';
import { useSkinTestWay } from './skinTestWay';

/** How her skin test stands, in one line that opens its page; where there is none it opens at putting it on. */
export function SkinTestOpener(
  props: Pick<StepProps, 'consultation' | 'settings' | 'nowMs'> & { readonly onOpen?: () => void },
) {
  const words = useWords();
  const open = useSkinTestWay();
  const view = createMemo(() => viewSkinTest(props.consultation.record, props.settings, props.nowMs));
  const sayNext = () => {
    if (view().mayPutOn) return words.skinTest.open.putOn;
    return view().isReadable ? words.skinTest.open.read : words.skinTest.open.look;
  };
  return (
    <section class="skin-test-opener" data-line="skin-test" data-skin-test={view().token}>
      <p>
        <strong>{words.skinTest.title}:</strong> {saySkinTest(view(), words)}
      </p>
      <BigButton
        act="skin-test"
        isWay
        onPress={() => {
          props.onOpen?.();
          open();
        }}
      >
        {sayNext()}
      </BigButton>
    </section>
  );
}
