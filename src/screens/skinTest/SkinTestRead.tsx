import { createMemo, Show } from 'solid-js';
import { Refusal } from '../../parts/Refusal';
import { useWords } from '../../parts/useWords';
import { createSender } from '../sender';
import type { StepProps } from '../stepProps';
import { ReadActions } from './ReadActions';
import { SkinTestOpener } from './SkinTestOpener';
import { sendReading } from './sendReading';
import './skinTest.css';
import { saySkinTest } from './skinTestSaid';
import { viewSkinTest } from './skinTestView';

/** Her skin test is read where she is asked, once it may be; before that, and without one, the way to its page. */
export function SkinTestRead(props: StepProps) {
  const words = useWords();
  const sender = createSender(props);
  const view = createMemo(() => viewSkinTest(props.consultation.record, props.settings, props.nowMs));
  return (
    <Show when={view().isReadable} fallback={<SkinTestOpener {...props} />}>
      <section class="skin-test-opener" data-line="skin-test" data-skin-test={view().token}>
        <p>
          <strong>{words.skinTest.title}:</strong> {saySkinTest(view(), words)}
        </p>
        <ReadActions
          mayReact
          isReadable
          onRead={(seen) => void sendReading(props.consultation.record, sender, seen)}
        />
        <Refusal refusal={sender.refusal()} />
      </section>
    </Show>
  );
}
