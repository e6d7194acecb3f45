import { createMemo, createSignal } from 'solid-js';
import { BigButton } from '../../parts/BigButton';
import { Dialog } from '../../parts/Dialog';
import { OnlyWatches } from '../../parts/OnlyWatches';
import { useWords } from '../../parts/useWords';
import type { StepProps } from '../stepProps';
import { SkinTest } from './SkinTest';
import './skinTest.css';
import { saySkinTest } from './skinTestSaid';
import { viewSkinTest } from './skinTestView';

/** How her skin test stands, in one line that opens it; where there is none it opens at putting it on. */
export function SkinTestOpener(props: StepProps) {
  const words = useWords();
  const [isOpen, setIsOpen] = createSignal(false);
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
      <BigButton act="skin-test" onPress={() => setIsOpen(true)}>
        {sayNext()}
      </BigButton>
      <Dialog isOpen={isOpen()} title={words.skinTest.of(props.page.kicker)} onClose={() => setIsOpen(false)}>
        <OnlyWatches />
        <SkinTest
          {...props}
          {...(view().mayPutOn ? { begins: 'now' } : {})}
          onKept={() => setIsOpen(false)}
        />
      </Dialog>
    </section>
  );
}
