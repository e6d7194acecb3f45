import { parkedForm } from '../../../shared/records/forms/course';
import { BigButton } from '../../parts/BigButton';
import { Refusal } from '../../parts/Refusal';
import { useWords } from '../../parts/useWords';
import { createEventForm } from '../eventForm';
import { PartForm } from '../PartForm';
import type { StepProps } from '../stepProps';

/** Parking her between visits: until when. */
export function ParkForm(props: StepProps & { readonly onParked: () => void }) {
  const words = useWords();
  const asked = createEventForm(props, parkedForm, `${props.consultation.id}/parked`, {});
  const park = async () => {
    if (await asked.send('PARKED')) props.onParked();
  };
  return (
    <section class="panel leaving-part" data-panel="park">
      <h3>{words.leaving.park}</h3>
      <PartForm step={props} form={asked} questions={parkedForm} words={words.leaving.parkedForm} />
      <div class="options">
        <BigButton kind={asked.isComplete() ? 'primary' : 'plain'} act="park" onPress={() => void park()}>
          {words.leaving.parkNow}
        </BigButton>
      </div>
      <Refusal refusal={asked.refusal()} />
    </section>
  );
}
