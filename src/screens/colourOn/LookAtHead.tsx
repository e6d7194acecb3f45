import { createMemo, Show } from 'solid-js';
import type { RawEvent } from '../../../shared/records/classify';
import type { Zone } from '../../../shared/records/zones';
import { BigButton } from '../../parts/BigButton';
import { ClockFace } from '../../parts/ClockFace';
import { Refusal } from '../../parts/Refusal';
import { StepPage } from '../../parts/StepPage';
import { useWords } from '../../parts/useWords';
import { createSender } from '../sender';
import type { StepProps } from '../stepProps';
import { listOnHead } from './viewHead';

/** A look at the head asks first of all whether it stings. Yes opens the rinse steps at once. */
export function LookAtHead(props: StepProps & { readonly zone: Zone; readonly onClose: () => void }) {
  const words = useWords();
  const said = () => words.colourOn;
  const sender = createSender(props);
  const clock = createMemo(
    () => listOnHead(props.consultation, props.nowMs).find(({ bowl }) => bowl.zone === props.zone)?.clock,
  );
  const look = (stinging: 'no' | 'yes'): RawEvent => ({
    type: 'LOOKED',
    answers: { of: 'head', zone: props.zone, stinging },
  });
  const sayNo = async () => {
    if (await sender.send(look('no'))) props.onClose();
  };
  /** Yes opens the rinse steps by itself, kept or not: she burns now. */
  const sayYes = () => props.rinseSteps.open(look('yes'));
  return (
    <StepPage
      page={props.page}
      title={said().stingingAsk}
      also={words.general.zones[props.zone]}
      actions={
        <>
          <BigButton act="cancel" onPress={props.onClose}>
            {words.general.back}
          </BigButton>
          <BigButton kind="danger" act="stinging-yes" onPress={sayYes}>
            {said().yes}
          </BigButton>
          <BigButton kind="primary" act="stinging-no" onPress={() => void sayNo()}>
            {said().no}
          </BigButton>
        </>
      }
    >
      <Show when={clock()}>
        {(running) => (
          <ClockFace clock={running()} strandNumber={null} nowMs={props.nowMs} units={props.settings.units} />
        )}
      </Show>
      <p class="lead">{said().askAloud}</p>
      <Refusal refusal={sender.refusal()} />
    </StepPage>
  );
}
