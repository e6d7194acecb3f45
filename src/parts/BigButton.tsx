import type { JSX } from 'solid-js';
import './button.css';
import { useMayWrite } from './useMayWrite';

/** A tap that is done at once: never for what is dangerous. `act` is what tests and styles know it by. */
export function BigButton(props: {
  readonly kind?: 'primary' | 'plain' | 'danger' | 'quiet' | 'attention';
  readonly act: string;
  readonly onPress: () => void;
  readonly isDisabled?: boolean;
  readonly isPressed?: boolean;
  /** It writes nothing: open also where this window only watches. */
  readonly isWay?: boolean;
  /** It says how skin, hair or scale are: a tap that was meant for what stood there before never says it. */
  readonly isLooked?: boolean;
  readonly children: JSX.Element;
}) {
  const mayWrite = useMayWrite();
  return (
    <button
      type="button"
      class="big-button"
      data-kind={props.kind ?? 'plain'}
      data-act={props.act}
      data-looked={props.isLooked === true ? '' : undefined}
      disabled={props.isDisabled === true || (props.isWay !== true && !mayWrite())}
      aria-pressed={props.isPressed}
      onClick={() => props.onPress()}
    >
      {props.children}
    </button>
  );
}
