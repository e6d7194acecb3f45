import { createMemo, Show } from 'solid-js';
import { issueTonerPermit } from '../../../shared/judgement/permit';
import type { PermitRefusal } from '../../../shared/judgement/permitRefusal';
import { stretchForm } from '../../../shared/records/forms/bowl';
import { findFelt } from '../../../shared/records/tonerProof';
import type { Zone } from '../../../shared/records/zones';
import { BigButton } from '../../parts/BigButton';
import { HandCaution } from '../../parts/HandCaution';
import { Refusal } from '../../parts/Refusal';
import { StepPage } from '../../parts/StepPage';
import { useWords } from '../../parts/useWords';
import { createEventForm } from '../eventForm';
import { PartSheet } from '../PartSheet';
import { SentRefusal } from '../SentRefusal';
import type { StepProps } from '../stepProps';

const { stretch, before } = stretchForm;
const first = { stretch } as const;
/** Weak once, it stays weak unless that was a wrong tap. */
const again = { stretch, before } as const;

/** What this page is for: nobody has felt it, or too long ago. */
const feelable: readonly string[] = ['stretchUnfelt', 'stretchDried'];

/** What the very hair says, rinsed and wet, before anything else goes on it; and that no toner goes on, where it is weak. */
export function FeelPage(
  props: StepProps & {
    readonly zone: Zone;
    readonly onClose: () => void;
    readonly onFelt: () => void;
  },
) {
  const words = useWords();
  const { record } = props.consultation;
  const name = `${props.consultation.id}/feel/${props.zone}/${record.stretches.length}`;
  const felt = findFelt(record, props.zone);
  const isWeak = felt !== null && felt.stretch !== 'springsBack';
  const asks = isWeak ? again : first;
  const asked = createEventForm(props, asks, name, {});
  /** What else keeps a toner back. */
  const against = createMemo((): PermitRefusal | null => {
    const permit = issueTonerPermit(props.consultation.record, props.zone, props.settings, props.nowMs);
    return permit.ok || feelable.includes(permit.error.code) ? null : permit.error;
  });
  const keep = async () => {
    const isTaken = await asked.send('STRETCH_NOTED', {
      zone: props.zone,
      ...(isWeak ? {} : { before: 'stands' }),
    });
    if (isTaken) props.onFelt();
  };
  return (
    <StepPage
      page={props.page}
      title={words.toner.feelTitle(words.general.zones[props.zone])}
      actions={
        <>
          <BigButton act="cancel" onPress={props.onClose}>
            {words.general.back}
          </BigButton>
          <BigButton kind="primary" act="keep-stretch" onPress={() => void keep()}>
            {words.toner.keep}
          </BigButton>
        </>
      }
    >
      <PartSheet
        step={props}
        form={asked}
        questions={asks}
        words={words.toner.felt}
        summary={words.toner.feelSummary}
      >
        <p class="limits">{words.toner.slowWaits}</p>
      </PartSheet>
      <Show when={against()} fallback={<HandCaution caution="outcome" />}>
        {(why) => <Refusal refusal={{ kind: 'permit', permit: why() }} />}
      </Show>
      <SentRefusal refusal={asked.refusal()} />
    </StepPage>
  );
}
