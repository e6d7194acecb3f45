import { createMemo, untrack } from 'solid-js';
import { extendedForm } from '../../shared/records/forms/bowl';
import { formatQuantity } from '../../shared/units/format';
import { BigButton } from '../parts/BigButton';
import { StepPage } from '../parts/StepPage';
import { useWords } from '../parts/useWords';
import { ClockLine } from './clocks/ClockLine';
import { createEventForm } from './eventForm';
import { PartSheet } from './PartSheet';
import { SentRefusal } from './SentRefusal';
import type { StepProps } from './stepProps';
import { countExtensionMin } from './strandTest/viewProcessing';

const { clock: _clock, minutes: minutesAsked, reason } = extendedForm;
const offered = [1, 2, 3, 5, 10, 15];

/** A running clock is extended, within its limit and with a reason. It is never held. */
export function MoreTime(props: StepProps & { readonly clockId: string; readonly onClose: () => void }) {
  const words = useWords();
  const said = () => words.strandTest.processing;
  const { record } = props.consultation;
  const clock = createMemo(() => props.consultation.record.clocks.find(({ id }) => id === props.clockId));
  const mostMin = () => {
    const running = clock();
    return running === undefined ? 0 : countExtensionMin(running, props.nowMs);
  };
  /** Beyond the maker's limit a figure is refused at its field, as it stood when this was opened; then by the chart. */
  const form = {
    minutes: { ...minutesAsked, field: { ...minutesAsked.field, max: Math.max(1, untrack(mostMin)) } },
    reason,
  } as const;
  const asked = createEventForm(
    props,
    form,
    `${props.consultation.id}/more/${props.clockId}/${record.nextSeq}`,
    {},
  );
  const strandNumber = () =>
    props.consultation.record.strands.find((strand) => strand.clock === props.clockId)?.number ?? null;
  const extend = async () => {
    if (await asked.send('CLOCK_EXTENDED', { clock: props.clockId })) props.onClose();
  };
  return (
    <StepPage
      page={props.page}
      title={said().extendTitle}
      actions={
        <>
          <BigButton act="cancel" onPress={props.onClose}>
            {words.general.back}
          </BigButton>
          <BigButton kind="primary" act="extend" onPress={() => void extend()}>
            {said().extend}
          </BigButton>
        </>
      }
    >
      <ClockLine
        clock={clock()}
        strandNumber={strandNumber()}
        nowMs={props.nowMs}
        units={props.settings.units}
      />
      <PartSheet
        step={props}
        form={asked}
        questions={form}
        words={words.strandTest.forms.extended}
        picks={{ minutes: offered.filter((minutes) => minutes <= mostMin()).map(String) }}
        summary={said().moreTime}
      >
        <p class="big-word">{said().extend}</p>
      </PartSheet>
      <p class="lead">
        {said().atMost(formatQuantity(mostMin(), 'minutes', props.settings.units, words.locale))}
      </p>
      <SentRefusal refusal={asked.refusal()} />
    </StepPage>
  );
}
