import { createMemo, createSignal, Show } from 'solid-js';
import { BigButton } from '../../parts/BigButton';
import { HoldButton } from '../../parts/HoldButton';
import { Refusal } from '../../parts/Refusal';
import { useWords } from '../../parts/useWords';
import { isOpenNow } from '../isOpenNow';
import { screenOf } from '../screenOf';
import { createSender } from '../sender';
import type { StepProps } from '../stepProps';
import { Correction } from '../stopped/Correction';
import { type SkinTestAsked, SkinTestForm } from './SkinTestForm';
import { saySkinTest } from './skinTestSaid';
import { viewSkinTest } from './skinTestView';

/**
 * The skin test of this client: put on, read, and once it is noted one line of how it stands. It may be read from any
 * step; what was noted wrongly is taken back by name, and asked anew.
 */
export function SkinTest(props: StepProps) {
  const words = useWords();
  const [asked, setAsked] = createSignal<SkinTestAsked | 'correction' | null>(null);
  const sender = createSender(props);
  const view = createMemo(() => viewSkinTest(props.consultation.record, props.settings, props.nowMs));
  const isCorrecting = () => asked() === 'correction';
  const noted = () => props.consultation.record.skinTest;
  /** The form that is open; what may not be put on any more is not asked any more. */
  const form = (): SkinTestAsked | null => {
    const now = asked();
    return now === 'correction' || !view().mayPutOn ? null : now;
  };
  /** Where she is stopped, the screen itself corrects. */
  const mayCorrect = createMemo(
    () =>
      noted() !== null &&
      screenOf(props.consultation.state) !== 'stopped' &&
      isOpenNow(props.consultation, correction, props.settings, props.nowMs),
  );
  const read = (seen: 'nothing' | 'reaction') => {
    const skinTest = noted();
    if (skinTest === null) return;
    const { method, site, putOnAtMs } = skinTest;
    void sender.send({ type: 'SKIN_TEST_NOTED', answers: { method, site, putOnAtMs, seen } });
  };
  const sayPlace = () => {
    const skinTest = noted();
    if (skinTest === null) return '';
    const { method, site } = words.skinTest.form;
    return words.skinTest.place(method.options[skinTest.method], site.options[skinTest.site]);
  };

  return (
    <section class="panel" data-panel="skin-test" data-skin-test={view().token}>
      <h2>{words.skinTest.title}</h2>
      <p>
        {saySkinTest(view(), words)} {sayPlace()}
      </p>
      <Show when={view().token === 'clear'}>
        <p class="soft">{words.skinTest.neverSafe}</p>
      </Show>
      <div class="options">
        <Show when={view().isReadable}>
          <BigButton act="skin-test-nothing" onPress={() => read('nothing')}>
            {words.skinTest.nothingSeen}
          </BigButton>
        </Show>
        <Show when={view().token === 'waiting'}>
          <HoldButton
            label={words.skinTest.reactionSeen}
            act="skin-test-reaction"
            onHeld={() => read('reaction')}
          />
        </Show>
        <Show when={view().mayPutOn && form() === null}>
          <BigButton act="skin-test-put-on" onPress={() => setAsked('now')}>
            {words.skinTest.putOnNow}
          </BigButton>
          <BigButton act="skin-test-earlier" onPress={() => setAsked('earlier')}>
            {words.skinTest.earlier}
          </BigButton>
        </Show>
        <Show when={mayCorrect()}>
          <BigButton
            kind="quiet"
            act="skin-test-correct"
            onPress={() => setAsked(isCorrecting() ? null : 'correction')}
          >
            {isCorrecting() ? words.skinTest.leaveIt : words.skinTest.correct}
          </BigButton>
        </Show>
      </div>
      <Show when={form()} keyed>
        {(which) => <SkinTestForm {...props} asked={which} onDone={() => setAsked(null)} />}
      </Show>
      <Show when={mayCorrect() && isCorrecting()}>
        <Correction {...props} answers={['skinTest']} title={words.skinTest.correctTitle} />
      </Show>
      <Refusal refusal={sender.refusal()} />
    </section>
  );
}

const correction = {
  type: 'CORRECTED',
  answers: { answer: 'skinTest', code: 'wrongTap', words: '-' },
} as const;
