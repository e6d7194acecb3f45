import { correctedForm } from '../../../shared/records/forms/course';
import { HoldButton } from '../../parts/HoldButton';
import { Refusal } from '../../parts/Refusal';
import { useWords } from '../../parts/useWords';
import { createEventForm } from '../eventForm';
import { PartForm } from '../PartForm';
import type { StepProps } from '../stepProps';

const form = { words: correctedForm.words } as const;

/** Two clients may share a ticket: the test stays in its own record, and is cited for this one no more. */
export function NotHers(props: StepProps) {
  const words = useWords();
  const asked = createEventForm(props, form, `${props.consultation.id}/skinTest/notHers`, {});
  const say = () => void asked.send('CORRECTED', { answer: 'skinTest', code: 'wrongClient' });
  return (
    <section class="panel" data-panel="not-hers">
      <h3>{words.skinTest.notHersTitle(props.consultation.record.ticket)}</h3>
      <p>{words.skinTest.notHersLead}</p>
      <PartForm step={props} form={asked} questions={form} words={words.leaving.correctedForm} />
      <div class="options">
        <HoldButton label={words.skinTest.notHers} act="not-hers" onHeld={say} />
      </div>
      <Refusal refusal={asked.refusal()} />
    </section>
  );
}
