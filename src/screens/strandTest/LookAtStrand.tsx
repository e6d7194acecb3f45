import { createMemo, Show } from 'solid-js';
import type { Form } from '../../../shared/records/form';
import { lookForm } from '../../../shared/records/forms/test';
import { findStrand } from '../../../shared/records/record';
import type { Zone } from '../../../shared/records/zones';
import { BigButton } from '../../parts/BigButton';
import { Caution } from '../../parts/Caution';
import { ClockFace } from '../../parts/ClockFace';
import { HoldButton } from '../../parts/HoldButton';
import { Refusal } from '../../parts/Refusal';
import { StepPage } from '../../parts/StepPage';
import { useWords } from '../../parts/useWords';
import { createEventForm } from '../eventForm';
import { PartForm } from '../PartForm';
import { createSender } from '../sender';
import type { StepProps } from '../stepProps';
import { listLevelPicks } from './levelPicks';

const { when: _strandLevel, ...level } = lookForm.level;
const { when: _strandFeel, ...feel } = lookForm.feel;
const form = { feel, level } as const satisfies Form;

/** One look: how it feels and how light it is, two taps and one to keep it. Its clock runs on above. */
export function LookAtStrand(props: StepProps & { readonly zone: Zone; readonly onClose: () => void }) {
  const words = useWords();
  const said = () => words.strandTest.processing;
  const strand = createMemo(() => findStrand(props.consultation.record, props.zone));
  const clock = createMemo(() => props.consultation.record.clocks.find(({ id }) => id === strand()?.clock));
  const name = `${props.consultation.id}/look/${props.zone}/${strand()?.looks.length}`;
  const asked = createEventForm(props, form, name, {});
  const breaking = createSender(props);
  const keep = async () => {
    if (await asked.send('LOOKED', { of: 'strand', zone: props.zone })) props.onClose();
  };
  const broke = async () => {
    if (await breaking.send({ type: 'STRAND_BROKE', answers: { zone: props.zone } })) props.onClose();
  };
  return (
    <StepPage
      page={props.page}
      title={said().lookTitle}
      actions={
        <>
          <BigButton act="cancel" onPress={props.onClose}>
            {words.general.back}
          </BigButton>
          <HoldButton
            label={said().broke(words.general.zones[props.zone])}
            act="strand-broke"
            onHeld={() => void broke()}
          />
          <BigButton kind="primary" act="keep-look" onPress={() => void keep()}>
            {said().saveLook}
          </BigButton>
        </>
      }
    >
      <Show when={clock()}>
        {(running) => (
          <ClockFace
            clock={running()}
            strandNumber={strand()?.number ?? null}
            nowMs={props.nowMs}
            units={props.settings.units}
            size="small"
          />
        )}
      </Show>
      <PartForm
        step={props}
        form={asked}
        questions={form}
        words={words.strandTest.forms.look}
        picks={{ level: listLevelPicks(props.consultation.record, props.zone) }}
      />
      <Refusal refusal={asked.refusal() ?? breaking.refusal()} />
      <Caution>
        <p>{said().caution}</p>
      </Caution>
    </StepPage>
  );
}
