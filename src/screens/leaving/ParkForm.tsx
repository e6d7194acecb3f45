import { createSignal } from 'solid-js';
import { parkedForm } from '../../../shared/records/forms/course';
import { BigButton } from '../../parts/BigButton';
import { createDraft } from '../../parts/form/draft';
import { FormFields } from '../../parts/form/FormFields';
import { Refusal } from '../../parts/Refusal';
import { useWords } from '../../parts/useWords';
import type { SubmitRefusal } from '../../station/makeStation';
import type { StepProps } from '../stepProps';

/** Parking her between visits: until when. */
export function ParkForm(props: StepProps & { readonly onParked?: () => void }) {
  const words = useWords();
  const draft = createDraft();
  const [refusal, setRefusal] = createSignal<SubmitRefusal | null>(null);
  const fields = () => {
    const refused = refusal();
    return refused?.kind === 'fields' ? refused.fields : [];
  };
  async function park(): Promise<void> {
    const taken = await props.submit({ type: 'PARKED', answers: draft.raw() });
    setRefusal(taken.ok ? null : taken.error);
    if (taken.ok) props.onParked?.();
  }
  return (
    <section class="panel" data-panel="park">
      <h3>{words.leaving.park}</h3>
      <FormFields
        form={parkedForm}
        words={words.leaving.parkedForm}
        draft={draft}
        onChange={() => setRefusal(null)}
        refusals={fields()}
        units={props.settings.units}
        hasAgeLine={false}
        nowMs={props.nowMs}
      />
      <div class="options">
        <BigButton act="park" onPress={() => void park()}>
          {words.leaving.parkNow}
        </BigButton>
      </div>
      <Refusal refusal={refusal()} />
    </section>
  );
}
