import { createMemo, For } from 'solid-js';
import { takenOffForm } from '../../../shared/records/forms/test';
import { findStrand } from '../../../shared/records/record';
import type { Zone } from '../../../shared/records/zones';
import { HandCaution } from '../../parts/HandCaution';
import { Refusal } from '../../parts/Refusal';
import { StepPage } from '../../parts/StepPage';
import { useWords } from '../../parts/useWords';
import { ClockLine } from '../clocks/ClockLine';
import { createEventForm } from '../eventForm';
import type { StepProps } from '../stepProps';
import { Tile, Tiles } from '../Tiles';
import { StrandWays } from './StrandWays';

const { or: _timeIsUp, ...why } = takenOffForm.why;
const form = {
  why: { ...why, options: takenOffForm.why.options.filter((each) => each !== 'timeIsUp') },
} as const;

/** A strand comes off before its time is up: why? */
export function TakeOff(
  props: StepProps & {
    readonly zone: Zone;
    readonly onClose: () => void;
    /** Absent where a strand may not be put aside. */
    readonly onDiscard?: () => void;
  },
) {
  const words = useWords();
  const name = `${props.consultation.id}/takeOff/${props.zone}/${props.consultation.record.strands.length}`;
  const asked = createEventForm(props, form, name, {});
  const takeOff = async (option: string) => {
    asked.draft.set('why', option);
    if (await asked.send('STRAND_TAKEN_OFF', { zone: props.zone })) props.onClose();
  };
  const strand = createMemo(() => findStrand(props.consultation.record, props.zone));
  return (
    <StepPage
      page={props.page}
      title={words.strandTest.processing.takeOffTitle}
      also={words.general.zones[props.zone]}
      actions={<StrandWays onClose={props.onClose} onDiscard={props.onDiscard} />}
    >
      <ClockLine
        clock={props.consultation.record.clocks.find(({ id }) => id === strand()?.clock)}
        strandNumber={strand()?.number ?? null}
        nowMs={props.nowMs}
        units={props.settings.units}
      />
      <Tiles question="why" label={words.strandTest.forms.takenOff.why.ask} size="large">
        <For each={form.why.options}>
          {(option) => (
            <Tile option={option} onPress={() => void takeOff(option)}>
              {words.strandTest.forms.takenOff.why.options[option]}
            </Tile>
          )}
        </For>
      </Tiles>
      <HandCaution caution="outcome" />
      <Refusal refusal={asked.refusal()} />
    </StepPage>
  );
}
