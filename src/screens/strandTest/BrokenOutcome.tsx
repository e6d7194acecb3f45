import { Show } from 'solid-js';
import type { StrandRecord } from '../../../shared/records/record';
import { formatQuantity } from '../../../shared/units/format';
import { Caution } from '../../parts/Caution';
import { useWords } from '../../parts/useWords';
import { createSender } from '../sender';
import type { StepProps } from '../stepProps';
import { OutcomePage } from './OutcomePage';
import { sayMix } from './sayMix';

/** What is recorded of hair that broke: it snapped, and no light pull was left to stretch it. */
const brokenAnswers = { fibre: 'broken', stretch: 'snaps', wentPast30: 'no' } as const;

/** A strand that broke, in the mix or as it was felt: nothing is left to be pulled, so it is recorded as it is. */
export function BrokenOutcome(
  props: StepProps & {
    readonly strand: StrandRecord;
    /** Back to what else is to be done first, or to what was felt. */
    readonly onClose?: (() => void) | undefined;
    readonly onRecorded?: (() => void) | undefined;
  },
) {
  const words = useWords();
  const said = () => words.strandTest.broken;
  const { strand } = props;
  const sender = createSender(props);
  const zone = () => words.general.zones[strand.zone];
  const minutes = () => formatQuantity(strand.minutesOn ?? 0, 'minutes', props.settings.units, words.locale);
  const record = async () => {
    const answers = { zone: strand.zone, ...brokenAnswers };
    if (await sender.send({ type: 'OUTCOME_RECORDED', answers })) props.onRecorded?.();
  };
  return (
    <OutcomePage
      {...props}
      beside={
        <Show when={props.by !== ''}>
          <p class="soft">{words.strandTest.takenOff.signedAs(props.by)}</p>
        </Show>
      }
      record={said().record}
      onRecord={() => void record()}
      // What broke is never put aside.
      onDiscard={null}
      refusal={sender.refusal()}
    >
      <Caution kind="stop">
        <div class="stop-said" data-broke={strand.zone}>
          <h2>{said().what(zone(), minutes())}</h2>
          <p>
            <strong>{said().closes(zone())}</strong> {sayMix(strand, words, props.settings)}
          </p>
          <p>{said().keep}</p>
        </div>
      </Caution>
    </OutcomePage>
  );
}
