import { For, Show } from 'solid-js';
import type { Consultation } from '../../../machines/consultation/consultation';
import type { Settings } from '../../../shared/records/settings';
import { BigButton } from '../../parts/BigButton';
import { HoldButton } from '../../parts/HoldButton';
import { Refusal } from '../../parts/Refusal';
import { useWords } from '../../parts/useWords';
import { sayWhose } from '../bar/sayWhose';
import { createSender } from '../sender';
import type { Submit } from '../stepProps';
import type { SkinTestRow } from './listSkinTests';
import { StatusMark } from './StatusMark';
import { sayHow, sayStatus } from './skinTestSaid';
import { TestPage } from './TestPage';

/** One skin test: how it stands, whose it is, and reading it. */
export function OneTest(props: {
  readonly row: SkinTestRow;
  /** The open consultations that cite it. */
  readonly citedBy: readonly Consultation[];
  readonly settings: Settings;
  readonly submit: Submit;
  readonly onTakeBack: () => void;
  readonly onBack: () => void;
}) {
  const words = useWords();
  const sender = createSender(props);
  const test = () => props.row.test;
  const said = () => sayStatus(props.row, words);
  const at = words.moments.dayAndTime;
  const read = (seen: 'nothing' | 'reaction') =>
    void sender.send({ type: 'SKIN_TEST_NOTED', answers: { seen } });
  const mayReact = () => props.row.status !== 'reaction';
  return (
    <TestPage
      kicker={words.skinTests.title}
      title={test().ticket}
      actions={
        <>
          <BigButton act="back-to-list" isWay onPress={props.onBack}>
            {words.general.back}
          </BigButton>
          <BigButton act="take-back" onPress={props.onTakeBack}>
            {words.skinTests.takeBack}
          </BigButton>
          <Show when={mayReact()}>
            <HoldButton
              label={words.skinTest.reactionSeen}
              act="skin-test-reaction"
              onHeld={() => read('reaction')}
            />
          </Show>
          <Show when={props.row.status === 'due'}>
            <BigButton kind="primary" act="skin-test-nothing" onPress={() => read('nothing')}>
              {words.skinTest.nothingSeen}
            </BigButton>
          </Show>
        </>
      }
    >
      <p class="skin-test-figure" data-status={props.row.status}>
        <StatusMark status={props.row.status} />
        <span>
          <strong>{said().what}</strong> {said().when}
        </span>
      </p>
      <dl class="skin-test-facts">
        <dt>{words.skinTests.putOn}</dt>
        <dd>{words.skinTests.notedBy(at(test().putOnAtMs), test().noted.by)}</dd>
        <dt>{words.skinTests.how}</dt>
        <dd>{sayHow(test(), words)}</dd>
        <Show when={test().read}>
          {(reading) => (
            <>
              <dt>{words.skinTests.read}</dt>
              <dd>{words.skinTests.notedBy(at(reading().atMs), reading().by)}</dd>
            </>
          )}
        </Show>
        <For each={test().readingsTakenBack}>
          {(back) => (
            <>
              <dt>{words.skinTests.readingTakenBack}</dt>
              <dd>{words.skinTests.takenBackBy(at(back.atMs), back.by, back.words)}</dd>
            </>
          )}
        </For>
        <Show when={props.citedBy.length > 0}>
          <dt>{words.skinTests.here}</dt>
          <dd>
            {props.citedBy
              .map((consultation) => sayWhose(consultation, words, props.settings.units))
              .join(', ')}
          </dd>
        </Show>
      </dl>
      <p class="soft">{words.skinTests.makers}</p>
      <p class="soft">
        {words.skinTest.neverSafe} {words.skinTests.notPowder}
      </p>
      <Refusal refusal={sender.refusal()} />
    </TestPage>
  );
}
