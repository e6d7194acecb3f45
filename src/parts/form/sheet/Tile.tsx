import type { JSX } from 'solid-js';
import { Show } from 'solid-js';
import { HoldButton } from '../../HoldButton';

/** One answer as a tile for a gloved finger: a tap, or a hold where the answer stops everything. */
export function Tile(props: {
  readonly option: string;
  readonly label: string;
  readonly isChosen: boolean;
  readonly isAbsolute?: boolean;
  readonly isDisabled?: boolean;
  readonly onChoose: () => void;
  readonly children?: JSX.Element;
}) {
  return (
    <Show
      when={props.isAbsolute === true}
      fallback={
        <button
          type="button"
          class="sheet-tile"
          data-option={props.option}
          aria-pressed={props.isChosen}
          disabled={props.isDisabled === true}
          onClick={() => props.onChoose()}
        >
          {props.children}
          <span class="sheet-tile-label">{props.label}</span>
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

/** A tile that is no answer but a way on: "That is all", "Another figure". */
export function WayTile(props: {
  readonly act: string;
  readonly label: string;
  readonly isPrimary?: boolean;
  readonly isDisabled?: boolean;
  readonly onPress: () => void;
}) {
  return (
    <button
      type="button"
      class="sheet-tile way-tile"
      data-act={props.act}
      data-primary={props.isPrimary === true}
      disabled={props.isDisabled === true}
      onClick={() => props.onPress()}
    >
      <span class="sheet-tile-label">{props.label}</span>
    </button>
  );
}
