import { For } from 'solid-js';
import { PIN_DIGITS } from '../../../shared/pin/pinRecord';
import { formatQuantity } from '../../../shared/units/format';
import type { UnitSettings } from '../../../shared/units/quantity';
import { NumberPad } from '../../parts/form/sheet/NumberPad';
import { useWords } from '../../parts/useWords';
import '../../parts/form/sheet/sheet.css';
import './pin.css';

/** Six figures by finger or keyboard. How many stand there is shown and said, never which. */
export function PinPad(props: {
  readonly text: string;
  readonly done: string;
  readonly isResting: boolean;
  readonly units: UnitSettings;
  readonly onChange: (text: string) => void;
  readonly onDone: () => void;
}) {
  const words = useWords();
  const write = (count: number) => formatQuantity(count, 'count', props.units, words.locale);
  const isWhole = () => props.text.length === PIN_DIGITS;
  const change = (text: string) => {
    if (!props.isResting) props.onChange(text.replace(/\D/g, '').slice(0, PIN_DIGITS));
  };
  const finish = () => {
    if (isWhole() && !props.isResting) props.onDone();
  };
  const type = (event: KeyboardEvent) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    if (/^\d$/.test(event.key)) change(props.text + event.key);
    else if (event.key === 'Backspace') change(props.text.slice(0, -1));
    else if (event.key === 'Enter' && isWhole()) finish();
    else return;
    event.preventDefault();
  };
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: its keys are buttons; a keyboard's figures do the same.
    <div class="pin-pad" tabindex="-1" autofocus onKeyDown={type}>
      <p class="pin-dots" role="status">
        <For each={Array.from({ length: PIN_DIGITS }, (_, index) => index)}>
          {(index) => <span class="pin-dot" data-filled={index < props.text.length ? '' : undefined} />}
        </For>
        <span class="only-heard">{words.pin.entered(write(props.text.length), write(PIN_DIGITS))}</span>
      </p>
      <NumberPad
        text={props.text}
        isWhole
        done={props.done}
        isDoneDisabled={!isWhole() || props.isResting}
        onChange={change}
        onDone={finish}
      />
    </div>
  );
}
