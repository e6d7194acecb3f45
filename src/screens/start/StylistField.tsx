import { For, Show } from 'solid-js';
import { BigButton } from '../../parts/BigButton';
import { useMayWrite } from '../../parts/useMayWrite';
import { useWords } from '../../parts/useWords';

/** Who does her hair? Whoever is at the tablet; another by two taps, the staff standing in the chairs' place meanwhile. */
export function StylistField(props: {
  readonly staff: readonly string[];
  readonly value: string;
  readonly isChoosing: boolean;
  readonly onChoosing: () => void;
  readonly onChange: (name: string) => void;
}) {
  const words = useWords();
  const mayWrite = useMayWrite();
  return (
    <Show
      when={props.isChoosing}
      fallback={
        <div class="stylist-said" data-stylist={props.value}>
          <p>
            {words.start.does} <strong>{props.value}</strong>
          </p>
          <BigButton act="other-stylist" onPress={props.onChoosing}>
            {words.start.otherStylist}
          </BigButton>
        </div>
      }
    >
      <fieldset class="field start-field" data-question="stylist">
        <legend>{words.start.form.stylist.ask}</legend>
        <div class="staff">
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
    </Show>
  );
}
