import { Show } from 'solid-js';
import { HoldButton } from '../HoldButton';

/** One answer among a few: a tap, or a hold where the answer stops everything. */
export function OptionButton(props: {
  readonly option: string;
  readonly label: string;
  readonly isChosen: boolean;
  readonly isAbsolute: boolean;
  readonly onChoose: () => void;
}) {
  return (
    <Show
      when={props.isAbsolute}
      fallback={
        <button
          type="button"
          class="option"
          data-option={props.option}
          aria-pressed={props.isChosen}
          onClick={() => props.onChoose()}
        >
          {props.label}
        </button>
      }
    >
      <HoldButton
        label={props.label}
        act="absolute"
        option={props.option}
        isPressed={props.isChosen}
        onHeld={() => props.onChoose()}
      />
    </Show>
  );
}
