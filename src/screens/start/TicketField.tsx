import type { JSX } from 'solid-js';
import type { FieldRefusal } from '../../../shared/records/readForm';
import type { UnitSettings } from '../../../shared/units/quantity';
import { nameRefusalId } from '../../parts/form/Field';
import { LetterPad } from '../../parts/LetterPad';
import { useMayWrite } from '../../parts/useMayWrite';
import { useWords } from '../../parts/useWords';
import { sayFieldRefusal } from '../../words/sayRefusal';

/** Whose is it? Initials or a ticket, tapped on the letters or typed. */
export function TicketField(props: {
  readonly value: string;
  readonly refusal: FieldRefusal | undefined;
  readonly units: UnitSettings;
  readonly onChange: (ticket: string) => void;
  readonly onEnter: () => void;
  /** What its letters lead to so far; it takes the hint's place. */
  readonly beside?: JSX.Element;
}) {
  const words = useWords();
  const mayWrite = useMayWrite();
  return (
    <fieldset class="field start-field" data-question="ticket" data-refused={props.refusal?.code}>
      <legend>{words.start.form.ticket.ask}</legend>
      {/* Its place is kept, so that no letter moves. */}
      <div class="ticket-beside">
        <p class="field-hint">{words.start.form.ticket.hint}</p>
        {props.beside}
      </div>
      <input
        type="text"
        class="text-box ticket-box"
        autocomplete="off"
        aria-label={words.start.form.ticket.ask}
        aria-describedby={nameRefusalId('ticket')}
        aria-invalid={props.refusal !== undefined}
        disabled={!mayWrite()}
        value={props.value}
        onInput={(event) => props.onChange(event.currentTarget.value)}
        onKeyDown={(event) => event.key === 'Enter' && props.onEnter()}
      />
      <p class="field-refusal" id={nameRefusalId('ticket')} aria-live="polite">
        {props.refusal === undefined ? '' : sayFieldRefusal(props.refusal, words, props.units)}
      </p>
      <LetterPad text={props.value} onChange={props.onChange} />
    </fieldset>
  );
}
