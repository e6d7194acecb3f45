import { createSignal, For, onMount, Show } from 'solid-js';
import type { NumberQuestion } from '../../../../shared/records/form';
import { markDecimals } from '../../../../shared/units/format';
import { readNumber } from '../../../../shared/units/numberField';
import { findShownUnit } from '../../../../shared/units/quantity';
import { useWords } from '../../useWords';
import { nameRefusalId } from '../Field';
import { listNumberPicks, writeDefault } from '../numberPicks';
import type { ControlProps } from './control';
import { LevelDial } from './LevelDial';
import { NumberPad } from './NumberPad';
import { Tile, WayTile } from './Tile';
import { Tiles } from './Tiles';

/** What begins a figure on a keyboard. */
const startsFigure = /^[0-9.,-]$/;

/**
 * A figure: the common ones as tiles, a dial for levels, any other on the pad or the keyboard.
 * What was typed stays as it was typed, right or wrong. Checked in tests/src/parts/sheet.test.tsx.
 */
export function NumberTiles(props: ControlProps<NumberQuestion>) {
  const words = useWords();
  const picks = () => listNumberPicks(props.name, props.question, props.units, props.picks);
  const isUnknown = () => (props.value ?? props.question.or) === 'unknown' && props.question.unknown === true;
  const typed = () => (typeof props.value === 'string' && !isUnknown() ? props.value : '');
  const shown = () => {
    if (isUnknown()) return '';
    return typeof props.value === 'string' ? props.value : writeDefault(props.question, props.units);
  };
  /** A default is written in the language; what was typed, as it was typed. */
  const inField = () => (typeof props.value === 'string' ? shown() : markDecimals(shown(), words.locale));
  const isLevel = () => props.question.field.quantity === 'level';
  const isOffered = () =>
    typed() === '' ||
    picks().includes(typed()) ||
    (isLevel() && readNumber(typed(), props.question.field, props.units).ok);
  const [isTyping, setIsTyping] = createSignal(!isOffered() || (picks().length === 0 && !isLevel()));
  const isRefused = () => props.refusals.some(({ path }) => path === props.path);
  /** Over a figure that stands already the pad's first key begins another one; one that does not read is gone on with. */
  const [isAnother, setIsAnother] = createSignal(!isRefused());
  const openPad = () => {
    setIsAnother(true);
    setIsTyping(true);
  };
  const type = (text: string) => {
    setIsAnother(false);
    props.onChange(text);
  };
  const unit = () => findShownUnit(props.question.field.quantity, props.units).symbol;
  const choose = (value: string) => {
    props.onChange(value);
    props.onDone();
  };
  const takeTyped = () => {
    if (typed() === '' && props.question.or === undefined) return;
    if (!isRefused()) props.onDone();
  };
  let input: HTMLInputElement | undefined;
  /** A digit on a keyboard is the beginning of a figure, wherever on this question the focus is. */
  const beginTyping = (event: KeyboardEvent) => {
    if (isTyping() || event.ctrlKey || event.metaKey || event.altKey || !startsFigure.test(event.key)) return;
    event.preventDefault();
    setIsTyping(true);
    props.onChange(event.key);
    input?.focus();
  };
  let place!: HTMLDivElement;
  onMount(() => place.closest('.sheet-question')?.addEventListener('keydown', beginTyping as EventListener));

  const unknownTile = () => (
    <Show when={props.question.unknown}>
      <Tile
        option="unknown"
        label={words.general.dontKnow}
        isChosen={isUnknown()}
        onChoose={() => choose('unknown')}
      />
    </Show>
  );

  return (
    <div ref={place} class="number-control">
      <Show
        when={isTyping()}
        fallback={
          <Show
            when={isLevel()}
            fallback={
              <Tiles count={picks().length + (props.question.unknown === true ? 2 : 1)}>
                <For each={picks()}>
                  {(pick) => (
                    <Tile
                      option={pick}
                      label={sayPick(markDecimals(pick, words.locale), unit())}
                      isChosen={shown() === pick}
                      onChoose={() => choose(pick)}
                    />
                  )}
                </For>
                {unknownTile()}
                <WayTile act="another-number" label={words.sheet.anotherNumber} onPress={openPad} />
              </Tiles>
            }
          >
            <LevelDial
              name={props.words.ask}
              value={shown()}
              onSet={(value) => props.onChange(value)}
              onChoose={choose}
              onDone={takeTyped}
              onType={openPad}
            >
              {unknownTile()}
            </LevelDial>
          </Show>
        }
      >
        <div class="typing">
          <NumberPad
            text={typed()}
            isAnother={isAnother()}
            isDoneDisabled={isRefused() || shown() === ''}
            onChange={type}
            onDone={takeTyped}
          />
          <div class="typing-side">
            <span class="number-box">
              <input
                ref={input}
                type="text"
                inputmode="decimal"
                autocomplete="off"
                aria-label={props.words.ask}
                aria-describedby={nameRefusalId(props.path)}
                aria-invalid={isRefused()}
                value={inField()}
                onInput={(event) => type(event.currentTarget.value)}
                onKeyDown={(event) => event.key === 'Enter' && takeTyped()}
              />
              <Show when={unit()}>{(symbol) => <span class="number-unit">{symbol()}</span>}</Show>
            </span>
            {unknownTile()}
            <Show when={picks().length > 0 || isLevel()}>
              <WayTile
                act="back-to-picks"
                label={words.sheet.backToPicks}
                onPress={() => setIsTyping(false)}
              />
            </Show>
          </div>
        </div>
      </Show>
    </div>
  );
}

const sayPick = (pick: string, unit: string): string => (unit === '' ? pick : `${pick}\u00a0${unit}`);
