import type { JSX } from 'solid-js';
import type { StrandRecord } from '../../../shared/records/record';
import { formatQuantity } from '../../../shared/units/format';
import { BigButton } from '../../parts/BigButton';
import { StepPage } from '../../parts/StepPage';
import { useWords } from '../../parts/useWords';
import type { TapRefusal } from '../explainRefusal';
import { SentRefusal } from '../SentRefusal';
import type { StepProps } from '../stepProps';
import { RunningLine } from './RunningLine';
import { SkinTestLine } from './SkinTestLine';
import { StrandWays } from './StrandWays';

/** The page of one strand that is off: which one it is, the ways out, and what records it. */
export function OutcomePage(
  props: StepProps & {
    readonly strand: StrandRecord;
    /** Beside the ways out. */
    readonly beside: JSX.Element;
    /** What the button says that records it. */
    readonly record: string;
    readonly onRecord: () => void;
    /** Absent where nothing else is to be done first. */
    readonly onClose?: (() => void) | undefined;
    /** Absent or null where a strand may not be put aside. */
    readonly onDiscard?: (() => void) | null | undefined;
    readonly refusal: TapRefusal | null;
    readonly children: JSX.Element;
  },
) {
  const words = useWords();
  const { strand } = props;
  const number = formatQuantity(strand.number, 'count', props.settings.units, words.locale);
  return (
    <StepPage
      page={props.page}
      title={words.strandTest.takenOff.title(words.general.zones[strand.zone])}
      also={[
        words.clock.strandName(number, null),
        words.strandTest.processing.snippedAt(words.strandTest.forms.strand.place.options[strand.place]),
      ].join(' · ')}
      actions={
        <>
          {props.beside}
          <StrandWays onClose={props.onClose} onDiscard={props.onDiscard} />
          <BigButton kind="primary" act="record-outcome" onPress={() => props.onRecord()}>
            {props.record}
          </BigButton>
        </>
      }
    >
      <RunningLine {...props} not={strand.zone} />
      {props.children}
      <SkinTestLine {...props} />
      <SentRefusal refusal={props.refusal} />
    </StepPage>
  );
}
