import type { Consultation } from '../../../machines/consultation/consultation';
import type { Settings } from '../../../shared/records/settings';
import { BigButton } from '../../parts/BigButton';
import { PlainPage } from '../../parts/PlainPage';
import { Refusal } from '../../parts/Refusal';
import { useWords } from '../../parts/useWords';
import { sayWhose } from '../bar/sayWhose';
import { createSender } from '../sender';
import type { Submit } from '../stepProps';
import { sayCameIn } from './cameIn';
import type { SkinTestRow } from './listSkinTests';
import { ReadActions } from './ReadActions';
import { sayHow, sayStatus } from './skinTestSaid';
import { TestFigure } from './TestFigure';

/** One skin test of the list: how it stands, whose it is, and reading it. */
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
  const said = () => sayStatus(props.row, words);
  const at = words.moments.dayAndTime;
  const read = (seen: 'nothing' | 'reaction') =>
    void sender.send({ type: 'SKIN_TEST_NOTED', answers: { seen } });
  const facts = (): readonly (readonly [string, string])[] => {
    const { putOnAtMs, noted, read: reading, readingsTakenBack, consent = 'notAsked' } = props.row.test;
    const { cameIn, readableAtMs } = props.row;
    const { skinTests } = words;
    const here = props.citedBy.map((each) => sayWhose(each, words, props.settings.units)).join(', ');
    return [
      [skinTests.putOn, skinTests.notedBy(at(putOnAtMs), noted.by)],
      ...(cameIn === null ? [] : [[skinTests.wait, sayCameIn(cameIn, readableAtMs, words)] as const]),
      [skinTests.how, sayHow(props.row.test, words)],
      [skinTests.record, words.skinTest.form.consent.options[consent]],
      ...(reading === null
        ? []
        : [[skinTests.read, skinTests.notedBy(at(reading.atMs), reading.by)] as const]),
      ...readingsTakenBack.map(
        (back) =>
          [skinTests.readingTakenBack, skinTests.takenBackBy(at(back.atMs), back.by, back.words)] as const,
      ),
      ...(here === '' ? [] : [[skinTests.here, here] as const]),
    ];
  };
  return (
    <PlainPage
      step="skinTests"
      kicker={words.skinTests.title}
      title={props.row.test.ticket}
      actions={
        <>
          <BigButton act="back-to-list" isWay onPress={props.onBack}>
            {words.general.back}
          </BigButton>
          <BigButton act="take-back" onPress={props.onTakeBack}>
            {words.skinTests.takeBack}
          </BigButton>
          <ReadActions
            mayReact={props.row.status !== 'reaction'}
            isReadable={props.row.status === 'due'}
            onRead={read}
          />
        </>
      }
    >
      <TestFigure
        status={props.row.status}
        what={said().what}
        when={said().when}
        line={props.row.test.line}
        facts={facts()}
      >
        <Refusal refusal={sender.refusal()} />
      </TestFigure>
    </PlainPage>
  );
}
