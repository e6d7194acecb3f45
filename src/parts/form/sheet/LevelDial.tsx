import { For, type JSX } from 'solid-js';
import { markDecimals } from '../../../../shared/units/format';
import { useWords } from '../../useWords';
import { WayTile } from './Tile';

const stops = ['1', '2', '3', '4', '5', '6', '7', '8', '9', '10'] as const;
const LOWEST = 1;
const HIGHEST = 10;

/** Where half a step begins while nothing is set: the middle of the ruler. */
const MIDDLE = 5;

/** The keys of a slider, as steps of the ruler. */
const steps: Readonly<Record<string, number>> = {
  ArrowRight: 0.5,
  ArrowUp: 0.5,
  ArrowLeft: -0.5,
  ArrowDown: -0.5,
  PageUp: 1,
  PageDown: -1,
  Home: -HIGHEST,
  End: HIGHEST,
};

/**
 * Which level? Ten stops from black to the lightest blond, each one tap; half steps by two buttons or the arrow keys.
 * Checked in tests/src/parts/sheet.test.tsx.
 */
export function LevelDial(props: {
  readonly name: string;
  /** As it would be typed; empty while nothing is set. */
  readonly value: string;
  /** Set, and not gone on: another half step may follow. */
  readonly onSet: (value: string) => void;
  /** A whole level, and on to the next question. */
  readonly onChoose: (value: string) => void;
  readonly onDone: () => void;
  readonly onType: () => void;
  /** What stands beside the half steps: "Don't know". */
  readonly children?: JSX.Element;
}) {
  const words = useWords();
  const level = () => Number(props.value.replace(',', '.'));
  const isSet = () => props.value !== '' && Number.isFinite(level());
  const move = (by: number) => {
    const from = isSet() ? level() : MIDDLE;
    props.onSet(String(Math.min(HIGHEST, Math.max(LOWEST, from + by))));
  };
  const turn = (event: KeyboardEvent) => {
    if (event.key === 'Enter' && isSet()) return props.onDone();
    const by = steps[event.key];
    if (by === undefined) return;
    event.preventDefault();
    move(by);
  };
  return (
    <div class="dial">
      <For each={stops}>
        {(stop) => (
          <button
            type="button"
            class="sheet-tile dial-stop"
            data-option={stop}
            data-level={stop}
            aria-pressed={isSet() && level() === Number(stop)}
            onClick={() => props.onChoose(stop)}
          >
            <svg class="dial-hair" viewBox="0 0 60 16" aria-hidden="true" preserveAspectRatio="none">
              <path d="M2 8 C16 1 30 15 58 7" />
            </svg>
            <span class="sheet-tile-label">{stop}</span>
          </button>
        )}
      </For>
      <WayTile act="half-less" label={words.sheet.halfLess} onPress={() => move(-0.5)} />
      <div
        class="dial-value"
        role="slider"
        tabIndex={0}
        aria-label={props.name}
        aria-valuemin={LOWEST}
        aria-valuemax={HIGHEST}
        aria-valuenow={isSet() ? level() : MIDDLE}
        aria-valuetext={isSet() ? markDecimals(props.value, words.locale) : words.sheet.notSaid}
        onKeyDown={turn}
      >
        {isSet() ? markDecimals(props.value, words.locale) : words.sheet.nothingYet}
      </div>
      <WayTile act="half-more" label={words.sheet.halfMore} onPress={() => move(0.5)} />
      {props.children}
      <WayTile
        act="take-level"
        label={words.sheet.done}
        isPrimary={isSet()}
        isDisabled={!isSet()}
        onPress={() => props.onDone()}
      />
      <button
        type="button"
        class="sheet-way dial-type"
        data-act="another-number"
        onClick={() => props.onType()}
      >
        {words.sheet.typeIt}
      </button>
    </div>
  );
}
