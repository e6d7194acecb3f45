import { For, Show } from 'solid-js';
import type { FieldRefusal } from '../../../shared/records/readForm';
import { nameRefusalId } from '../../parts/form/Field';
import '../../parts/form/form.css';
import { useMayWrite } from '../../parts/useMayWrite';
import { useWords } from '../../parts/useWords';
import type { Seat } from './startView';

/** What is wrong with the chair, as it is known and as it is said. */
export interface ChairRefusal {
  readonly code: FieldRefusal['code'] | 'taken';
  readonly says: string;
}

/** At which chair? Every chair in one tap; one that is taken shows whose it is, and is refused with that. */
export function ChairField(props: {
  readonly seats: readonly Seat[];
  readonly write: (chair: number) => string;
  readonly value: string;
  /** Said at the field; null while nothing is wrong. */
  readonly refusal: ChairRefusal | null;
  readonly onChange: (chair: string) => void;
}) {
  const words = useWords();
  const mayWrite = useMayWrite();
  return (
    <fieldset class="field start-field" data-question="chair" data-refused={props.refusal?.code}>
      <legend>{words.start.form.chair.ask}</legend>
      <div class="chairs">
        <For each={props.seats.map(({ chair }) => chair)}>
          {(chair) => {
            const ticket = () => props.seats.find((seat) => seat.chair === chair)?.ticket ?? null;
            const name = () => props.write(chair);
            return (
              <button
                type="button"
                class="option chair"
                data-option={name()}
                data-taken={ticket() ?? undefined}
                disabled={!mayWrite()}
                aria-pressed={ticket() === null && props.value === name()}
                onClick={() => props.onChange(name())}
              >
                <span class="chair-number">{name()}</span>
                <Show when={ticket()}>
                  {(whose) => (
                    <span class="chair-ticket">
                      <span class="only-heard">{words.start.takenBy} </span>
                      {whose()}
                    </span>
                  )}
                </Show>
              </button>
            );
          }}
        </For>
      </div>
      <p class="field-refusal" id={nameRefusalId('chair')} aria-live="polite">
        {props.refusal?.says}
      </p>
    </fieldset>
  );
}
