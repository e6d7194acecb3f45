import { createMemo, createSignal, Match, Show, Switch } from 'solid-js';
import { BigButton } from '../../parts/BigButton';
import { Refusal } from '../../parts/Refusal';
import { StepPage } from '../../parts/StepPage';
import { useWords } from '../../parts/useWords';
import { isOpenNow } from '../isOpenNow';
import { SkinTestSeen } from '../practice/StrandSeen';
import { screenOf } from '../screenOf';
import { createSender } from '../sender';
import type { StepProps } from '../stepProps';
import { sayCameIn } from './cameIn';
import type { Frame } from './frame';
import { PutOn, type SkinTestAsked } from './PutOn';
import { ReadActions } from './ReadActions';
import { sendReading } from './sendReading';
import { NotHers, WronglyNoted } from './TakenBackHere';
import './skinTest.css';
import { sayHow, sayStatus } from './skinTestSaid';
import { viewSkinTest } from './skinTestView';
import { TestFigure } from './TestFigure';

type Asked = SkinTestAsked | 'correction' | 'notHers';

/**
 * The skin test of this client, over whatever step she is at: put on, read, taken back by name where it was noted
 * wrongly, and left to the other client where it is one of the same ticket.
 */
export function SkinTestPage(props: StepProps & { readonly onBack: () => void }) {
  const words = useWords();
  const view = createMemo(() => viewSkinTest(props.consultation.record, props.settings, props.nowMs));
  const [asked, setAsked] = createSignal<Asked | null>(null);
  const sender = createSender(props);
  const noted = () => props.consultation.record.skinTest;
  const putsOn = (): SkinTestAsked | null => {
    if (!view().mayPutOn) return null;
    return asked() === 'earlier' ? 'earlier' : 'now';
  };
  /** Where she is stopped, the screen itself corrects. */
  const mayCorrect = createMemo(
    () =>
      noted() !== null &&
      screenOf(props.consultation.state) !== 'stopped' &&
      isOpenNow(props.consultation, correction, props.settings, props.nowMs),
  );
  const read = async (seen: 'nothing' | 'reaction') => {
    const isTaken = await sendReading(props.consultation.record, sender, seen);
    if (isTaken) props.onBack();
  };
  const facts = (): readonly (readonly [string, string])[] => {
    const skinTest = noted();
    if (skinTest === null) return [];
    const { skinTests, moments } = words;
    const { putOnAtMs, readAtMs, seen, line = '', by } = skinTest;
    const { cameIn, readableAtMs } = view();
    return [
      [skinTests.putOn, moments.dayAndTime(putOnAtMs)],
      ...(cameIn === null || readableAtMs === null
        ? []
        : [[skinTests.wait, sayCameIn(cameIn, readableAtMs, words)] as const]),
      [skinTests.how, sayHow({ ...skinTest, line }, words)],
      ...(seen === 'notReadYet' ? [] : [[skinTests.read, moments.dayAndTime(readAtMs)] as const]),
      [skinTests.notedUnder, skinTests.underTicket(by, props.consultation.record.ticket)],
    ];
  };
  const said = () => sayStatus(view(), words);
  const frame: Frame = (framed) => (
    <StepPage page={props.page} title={framed.title} actions={framed.actions}>
      <SkinTestSeen />
      {framed.children}
    </StepPage>
  );

  return (
    <Switch
      fallback={
        <StepPage
          page={props.page}
          title={words.skinTest.title}
          actions={
            <>
              <BigButton act="skin-test-back" isWay onPress={props.onBack}>
                {words.general.back}
              </BigButton>
              <Show when={mayCorrect()}>
                <BigButton act="skin-test-not-hers" onPress={() => setAsked('notHers')}>
                  {words.skinTest.notHers}
                </BigButton>
                <BigButton act="skin-test-correct" onPress={() => setAsked('correction')}>
                  {words.skinTest.correct}
                </BigButton>
              </Show>
              <ReadActions
                mayReact={noted() !== null && view().token !== 'positive'}
                isReadable={view().isReadable}
                onRead={(seen) => void read(seen)}
              />
            </>
          }
        >
          <SkinTestSeen />
          <section class="skin-test-stands" data-panel="skin-test" data-skin-test={view().token}>
            <TestFigure
              status={view().status}
              what={said().what}
              when={said().when}
              line={noted()?.line ?? ''}
              facts={facts()}
            >
              <Refusal refusal={sender.refusal()} />
            </TestFigure>
          </section>
        </StepPage>
      }
    >
      <Match when={mayCorrect() && asked() === 'correction'}>
        <WronglyNoted {...props} onBack={() => setAsked(null)} />
      </Match>
      <Match when={mayCorrect() && asked() === 'notHers'}>
        <NotHers {...props} onBack={() => setAsked(null)} />
      </Match>
      <Match when={putsOn()} keyed>
        {(which) => (
          <PutOn
            submit={props.submit}
            settings={props.settings}
            nowMs={props.nowMs}
            asked={which}
            draft={props.consultation.id}
            title={words.skinTest.title}
            frame={frame}
            onOther={setAsked}
            onDone={props.onBack}
            onCancel={props.onBack}
          />
        )}
      </Match>
    </Switch>
  );
}

const correction = {
  type: 'CORRECTED',
  answers: { answer: 'skinTest', code: 'wrongTap', words: '-' },
} as const;
