import { For } from 'solid-js';
import { findDecimalMark } from '../../../../shared/units/format';
import { useWords } from '../../useWords';

const digits = ['7', '8', '9', '4', '5', '6', '1', '2', '3'] as const;

/** Ten digits, the decimal mark of the language, clear and done, for wet gloves. What is typed on a keyboard goes into the field above it. */
export function NumberPad(props: {
  readonly text: string;
  /** What stands is left behind by the next digit; taking one away or all is still of what stands. */
  readonly isAnother?: boolean;
  readonly isDoneDisabled?: boolean;
  readonly onChange: (text: string) => void;
  readonly onDone: () => void;
}) {
  const words = useWords();
  const key = (text: string, name = text) => (
    <button
      type="button"
      class="pad-key"
      data-key={name}
      onClick={() => props.onChange(`${props.isAnother ? '' : props.text}${text}`)}
    >
      {text}
    </button>
  );
  return (
    <fieldset class="number-pad" aria-label={words.sheet.pad}>
      <For each={digits}>{(digit) => key(digit)}</For>
      {key(findDecimalMark(words.locale), '.')}
      {key('0')}
      <button
        type="button"
        class="pad-key"
        data-key="back"
        aria-label={words.sheet.lastAway}
        onClick={() => props.onChange(props.text.slice(0, -1))}
      >
        <svg class="pad-icon" viewBox="0 0 36 24" aria-hidden="true">
          <path d="M11 2 H34 V22 H11 L2 12 Z M17 8 L26 16 M26 8 L17 16" />
        </svg>
      </button>
      <button
        type="button"
        class="pad-key pad-word"
        data-key="clear"
        disabled={props.text === ''}
        onClick={() => props.onChange('')}
      >
        {words.sheet.clear}
      </button>
      <button
        type="button"
        class="pad-key pad-word pad-done"
        data-act="pad-done"
        disabled={props.isDoneDisabled === true}
        onClick={() => props.onDone()}
      >
        {words.sheet.done}
      </button>
    </fieldset>
  );
}
