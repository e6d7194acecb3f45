import { createMemo, Show } from 'solid-js';
import { useWords } from '../../parts/useWords';
import { viewSkinTest } from '../skinTest/skinTestView';
import type { StepProps } from '../stepProps';

/** However good the strand is, an unread skin test keeps everything off the head: said while it is tested. */
export function SkinTestLine(props: Pick<StepProps, 'consultation' | 'settings' | 'nowMs'>) {
  const words = useWords();
  const line = createMemo(() => {
    const view = viewSkinTest(props.consultation.record, props.settings, props.nowMs);
    const said = words.strandTest.skinTest;
    if (view.token === 'missing' || view.token === 'lapsed') return said[view.token];
    if (view.token !== 'waiting') return null;
    return view.isReadable || view.readableAtMs === null
      ? said.toRead
      : said.waiting(words.moments.dayAndTime(view.readableAtMs));
  });
  return (
    <Show when={line()}>
      {(what) => (
        <p class="soft skin-test-line" data-line="skin-test">
          {what()}
        </p>
      )}
    </Show>
  );
}
