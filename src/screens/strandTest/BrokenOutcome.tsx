import { Show } from 'solid-js';
import type { StrandRecord } from '../../../shared/records/record';
import { formatQuantity } from '../../../shared/units/format';
import { BigButton } from '../../parts/BigButton';
import { Caution } from '../../parts/Caution';
import { StepPage } from '../../parts/StepPage';
import { useWords } from '../../parts/useWords';
import { SentRefusal } from '../SentRefusal';
import { createSender } from '../sender';
import type { StepProps } from '../stepProps';
import { brokenAnswers } from './outcomeOfBroken';
import { RunningLine } from './RunningLine';
import { SkinTestLine } from './SkinTestLine';
import { sayMix } from './sayMix';

/** A strand that broke in the mix: nothing is left to be felt or pulled, so it is recorded as it is. */
export function BrokenOutcome(
  props: StepProps & {
    readonly strand: StrandRecord;
    /** Absent where nothing else is to be done first. */
    readonly onClose?: () => void;
  },
) {
  const words = useWords();
  const said = () => words.strandTest.broken;
  const { strand } = props;
  const sender = createSender(props);
  const zone = () => words.general.zones[strand.zone];
  const write = (value: number, quantity: 'count' | 'minutes') =>
    formatQuantity(value, quantity, props.settings.units, words.locale);
  const record = async () => {
    const answers = { zone: strand.zone, ...brokenAnswers };
    if (await sender.send({ type: 'OUTCOME_RECORDED', answers })) props.onClose?.();
  };
  return (
    <StepPage
      page={props.page}
      title={words.strandTest.takenOff.title(zone())}
      also={[
        words.clock.strandName(write(strand.number, 'count'), null),
        words.strandTest.processing.snippedAt(words.strandTest.forms.strand.place.options[strand.place]),
      ].join(' · ')}
      actions={
        <>
          <Show when={props.by !== ''}>
            <p class="soft">{words.strandTest.takenOff.signedAs(props.by)}</p>
          </Show>
          <Show when={props.onClose}>
            {(close) => (
              <BigButton act="cancel" onPress={close()}>
                {words.general.back}
              </BigButton>
            )}
          </Show>
          <BigButton kind="primary" act="record-outcome" onPress={() => void record()}>
            {said().record}
          </BigButton>
        </>
      }
    >
      <RunningLine {...props} not={strand.zone} />
      <Caution kind="stop">
        <div class="stop-said" data-broke={strand.zone}>
          <h2>{said().what(zone(), write(strand.minutesOn ?? 0, 'minutes'))}</h2>
          <p>
            <strong>{said().closes(zone())}</strong> {sayMix(strand, words, props.settings)}
          </p>
          <p>{said().keep}</p>
        </div>
      </Caution>
      <SkinTestLine {...props} />
      <SentRefusal refusal={sender.refusal()} />
    </StepPage>
  );
}
