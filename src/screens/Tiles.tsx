import { type JSX, onMount } from 'solid-js';
import { useMayWrite } from '../parts/useMayWrite';
import './tiles.css';

/** The answers of one question as tiles, each as large as a finger in a wet glove. */
export function Tiles(props: {
  /** What tests and styles know the question by. */
  readonly question: string;
  readonly label: string;
  /** `large`: two or three answers that fill the screen; `wide`: words of some length; `pair`: two columns, three where it is high; `two`: two. */
  readonly size?: 'large' | 'wide' | 'pair' | 'two' | 'plain';
  /** It follows an answer: fingers and keys go on from its first tile. */
  readonly takesFocus?: boolean;
  readonly children: JSX.Element;
}) {
  let place!: HTMLFieldSetElement;
  onMount(() => {
    if (props.takesFocus === true) place.querySelector('button')?.focus({ preventScroll: true });
  });
  return (
    <fieldset
      ref={place}
      class="answer-tiles"
      data-question={props.question}
      data-size={props.size ?? 'plain'}
    >
      <legend class="only-heard">{props.label}</legend>
      {props.children}
    </fieldset>
  );
}

/** One answer: a tap takes it. */
export function Tile(props: {
  readonly option?: string;
  readonly act?: string;
  readonly isPressed?: boolean;
  readonly isDisabled?: boolean;
  /** A figure is written larger than words. */
  readonly isFigure?: boolean;
  /** As of a button: a tap that was meant for what stood there before never says it. */
  readonly isLooked?: boolean;
  readonly onPress: () => void;
  readonly children: JSX.Element;
}) {
  const mayWrite = useMayWrite();
  return (
    <button
      type="button"
      class="answer-tile"
      classList={{ 'answer-figure': props.isFigure === true }}
      data-option={props.option}
      data-act={props.act}
      data-looked={props.isLooked === true ? '' : undefined}
      aria-pressed={props.isPressed}
      disabled={props.isDisabled === true || !mayWrite()}
      onClick={() => props.onPress()}
    >
      {props.children}
    </button>
  );
}
