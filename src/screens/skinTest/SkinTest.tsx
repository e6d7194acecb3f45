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
import { NotHers } from './NotHers';
import { type SkinTestAsked, SkinTestForm } from './SkinTestForm';
import './skinTest.css';
import { saySkinTest } from './skinTestSaid';
import { viewSkinTest } from './skinTestView';

type Asked = SkinTestAsked | 'correction' | 'notHers';

/**
 * The skin test of this client: put on, read, and once it is noted how it stands. It may be read from any step; what was
 * noted wrongly is taken back by name, and one of another client with the same ticket is left to her.
 */
export function SkinTest(
  props: StepProps & { readonly begins?: SkinTestAsked; readonly onKept?: () => void },
) {
  const words = useWords();
  const [asked, setAsked] = createSignal<Asked | null>(props.begins ?? null);
  const sender = createSender(props);
  const view = createMemo(() => viewSkinTest(props.consultation.record, props.settings, props.nowMs));
  const noted = () => props.consultation.record.skinTest;
  /** The form that is open; what may not be put on any more is not asked any more. */
  const form = (): SkinTestAsked | null => {
    const now = asked();
    return now === 'correction' || now === 'notHers' || !view().mayPutOn ? null : now;
  };
  /** Where she is stopped, the screen itself corrects. */
  const mayCorrect = createMemo(
    () =>
      noted() !== null &&
      screenOf(props.consultation.state) !== 'stopped' &&
      isOpenNow(props.consultation, correction, props.settings, props.nowMs),
  );
  const isAsked = (which: Asked) => mayCorrect() && asked() === which;
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
    return words.skinTest.place(
      method.options[skinTest.method],
      site.options[skinTest.site],
      skinTest.line ?? '',
    );
  };
  const toggle = (which: Asked) => () => setAsked(asked() === which ? null : which);

  return (
    <section class="panel" data-panel="skin-test" data-skin-test={view().token}>
      <h2>{words.skinTest.title}</h2>
      <p>
        {saySkinTest(view(), words)} {sayPlace()}
      </p>
      <Show when={noted()}>
        {(test) => <p class="soft">{words.skinTest.notedBy(test().by, props.consultation.record.ticket)}</p>}
      </Show>
      <Show when={view().token === 'clear'}>
        <p class="soft">{words.skinTest.neverSafe}</p>
      </Show>
      <Show when={form() === null}>
        <div class="options">
          <Show when={mayCorrect()}>
            <BigButton kind="quiet" act="skin-test-not-hers" onPress={toggle('notHers')}>
              {isAsked('notHers') ? words.skinTest.leaveIt : words.skinTest.notHers}
            </BigButton>
            <BigButton kind="quiet" act="skin-test-correct" onPress={toggle('correction')}>
              {isAsked('correction') ? words.skinTest.leaveIt : words.skinTest.correct}
            </BigButton>
          </Show>
          <Show when={view().token === 'waiting'}>
            <HoldButton
              label={words.skinTest.reactionSeen}
              act="skin-test-reaction"
              onHeld={() => read('reaction')}
            />
          </Show>
          <Show when={view().mayPutOn}>
            <BigButton act="skin-test-earlier" onPress={() => setAsked('earlier')}>
              {words.skinTest.earlier}
            </BigButton>
            <BigButton act="skin-test-put-on" onPress={() => setAsked('now')}>
              {words.skinTest.putOnNow}
            </BigButton>
          </Show>
          <Show when={view().isReadable}>
            <BigButton kind="primary" act="skin-test-nothing" onPress={() => read('nothing')}>
              {words.skinTest.nothingSeen}
            </BigButton>
          </Show>
        </div>
      </Show>
      <Show when={form()} keyed>
        {(which) => (
          <SkinTestForm
            submit={props.submit}
            settings={props.settings}
            nowMs={props.nowMs}
            asked={which}
            draft={props.consultation.id}
            onOther={setAsked}
            onDone={() => {
              setAsked(null);
              props.onKept?.();
            }}
            onCancel={() => setAsked(null)}
          />
        )}
      </Show>
      <Show when={isAsked('correction')}>
        <Correction {...props} answers={['skinTest']} title={words.skinTest.correctTitle} />
      </Show>
      <Show when={isAsked('notHers')}>
        <NotHers {...props} />
      </Show>
      <Refusal refusal={sender.refusal()} />
    </section>
  );
}

const correction = {
  type: 'CORRECTED',
  answers: { answer: 'skinTest', code: 'wrongTap', words: '-' },
} as const;
