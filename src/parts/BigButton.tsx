import type { JSX } from 'solid-js';
import './button.css';

/** A tap that is done at once: never for what is dangerous. `act` is what tests and styles know it by. */
export function BigButton(props: {
  readonly kind?: 'primary' | 'plain' | 'danger' | 'quiet' | 'attention';
  readonly act: string;
  readonly onPress: () => void;
  readonly isDisabled?: boolean;
  readonly isPressed?: boolean;
  readonly children: JSX.Element;
}) {
  return (
    <button
      type="button"
      class="big-button"
      data-kind={props.kind ?? 'plain'}
      data-act={props.act}
      disabled={props.isDisabled === true}
      aria-pressed={props.isPressed}
      onClick={() => props.onPress()}
    >
      {props.children}
    </button>
  );
}
