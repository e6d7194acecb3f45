import { correctedForm } from '../../../shared/records/forms/course';
import { BigButton } from '../../parts/BigButton';
import { HoldButton } from '../../parts/HoldButton';
import { Refusal } from '../../parts/Refusal';
import { StepPage } from '../../parts/StepPage';
import { useWords } from '../../parts/useWords';
import { createEventForm } from '../eventForm';
import { PartForm } from '../PartForm';
import type { StepProps } from '../stepProps';

const form = { words: correctedForm.words } as const;

/** Two clients may share a ticket: the test stays in its own record, and is cited for this one no more. */
export function NotHers(props: StepProps & { readonly onBack: () => void }) {
  const words = useWords();
  const asked = createEventForm(props, form, `${props.consultation.id}/skinTest/notHers`, {});
  const say = async () => {
    if (await asked.send('CORRECTED', { answer: 'skinTest', code: 'wrongClient' })) props.onBack();
  };
  return (
    <StepPage
      page={props.page}
      title={words.skinTest.notHersTitle(props.consultation.record.ticket)}
      actions={
        <BigButton act="skin-test-leave" isWay onPress={props.onBack}>
          {words.skinTest.leaveIt}
        </BigButton>
      }
    >
      <p>{words.skinTest.notHersLead}</p>
      <PartForm step={props} form={asked} questions={form} words={words.leaving.correctedForm} />
      <div class="options">
        <HoldButton label={words.skinTest.notHers} act="not-hers" onHeld={() => void say()} />
      </div>
      <Refusal refusal={asked.refusal()} />
    </StepPage>
  );
}
