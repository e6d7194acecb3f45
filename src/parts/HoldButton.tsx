import { Show } from 'solid-js';
import './button.css';
import { createHold } from './hold';
import { useMayWrite } from './useMayWrite';
import { useWords } from './useWords';

/**
 * What must not happen by a stray tap: press and hold. A short press, a switch or a screen reader's click offers a
 * second button for five seconds instead. Checked in tests/src/parts/holdButton.test.tsx.
 */
export function HoldButton(props: {
  readonly label: string;
  readonly onHeld: () => void;
  readonly act: string;
  readonly option?: string;
  readonly isPressed?: boolean;
  readonly isDisabled?: boolean;
  /** `plain`: held so that no stray tap does it, not because it is dangerous. */
  readonly kind?: 'danger' | 'plain';
}) {
  const words = useWords();
  const mayWrite = useMayWrite();
  const hold = createHold(() => props.onHeld());
  let place!: HTMLDivElement;
  const isKey = (event: KeyboardEvent) => event.key === ' ' || event.key === 'Enter';

  return (
    <div ref={place} class="hold" data-phase={hold.phase()}>
      <button
        type="button"
        class="hold-button"
        data-act={props.act}
        data-option={props.option}
        data-kind={props.kind ?? 'danger'}
        disabled={props.isDisabled === true || !mayWrite()}
        aria-pressed={props.isPressed}
        onPointerDown={(event) => event.button === 0 && hold.begin()}
        onPointerLeave={() => hold.breakOff()}
        onPointerCancel={() => hold.breakOff()}
        onContextMenu={(event) => event.preventDefault()}
        onKeyDown={(event) => {
          if (!isKey(event)) return;
          event.preventDefault();
          if (!event.repeat) hold.begin();
        }}
        onKeyUp={(event) => {
          if (!isKey(event)) return;
          event.preventDefault();
          hold.press();
        }}
        onBlur={() => hold.breakOff()}
        onClick={() => hold.press()}
      >
        <span class="hold-label">{props.label}</span>
        <span class="hold-hint">
          {/* Both take their room, so that the button stays as wide as it is under the finger. */}
          <span class="hold-hint-rest">{words.general.holdHint}</span>
          <span class="hold-hint-held">{words.general.keepHolding}</span>
        </span>
      </button>
      <Show when={hold.phase() === 'armed'}>
        <div class="hold-second" data-side={findSide(place)} ref={bringIntoSight}>
          <p role="status">{words.general.confirmWithin}</p>
          <button
            type="button"
            class="hold-confirm"
            data-act={`${props.act}-confirm`}
            onClick={() => hold.confirm()}
          >
            {words.general.confirmHold(props.label)}
          </button>
        </div>
      </Show>
    </div>
  );
}

/** What appears grows towards the middle of the screen, never beyond its edge. */
const findSide = (place: HTMLElement): 'left' | 'right' =>
  place.getBoundingClientRect().left > window.innerWidth / 2 ? 'right' : 'left';

const bringIntoSight = (second: HTMLElement): void =>
  queueMicrotask(() => second.scrollIntoView({ block: 'nearest' }));
