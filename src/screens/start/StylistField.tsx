import { For } from 'solid-js';
import { useMayWrite } from '../../parts/useMayWrite';
import { useWords } from '../../parts/useWords';

/** Who does her hair? One tap among the staff; whoever is at the tablet until another is tapped. */
export function StylistField(props: {
  readonly staff: readonly string[];
  readonly value: string;
  readonly onChange: (name: string) => void;
}) {
  const words = useWords();
  const mayWrite = useMayWrite();
  return (
    <fieldset class="field start-field" data-question="stylist">
      <legend>{words.start.form.stylist.ask}</legend>
      <div class="options">
        <For each={props.staff}>
          {(name) => (
            <button
              type="button"
              class="option stylist"
              data-option={name}
              disabled={!mayWrite()}
              aria-pressed={props.value === name}
              onClick={() => props.onChange(name)}
            >
              {name}
            </button>
          )}
        </For>
      </div>
    </fieldset>
  );
}
