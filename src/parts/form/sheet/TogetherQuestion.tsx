import { type JSX, onMount, Show } from 'solid-js';
import { Tile, WayTile } from './Tile';
import { Tiles } from './Tiles';

/** Questions that mostly have the same answer: said together in one tap, or one by one. */
export interface Together {
  readonly names: readonly string[];
  /** The answer that is said to all of them. */
  readonly option: string;
  readonly words: {
    readonly ask: string;
    readonly hint?: string;
    readonly all: string;
    readonly apart: string;
  };
}

/** "Dry everywhere", or place by place. */
export function TogetherQuestion(props: {
  readonly together: Together;
  readonly takesFocus: boolean;
  /** Below the heading. */
  readonly beside: JSX.Element;
  readonly onAll: () => void;
  readonly onApart: () => void;
}) {
  let heading!: HTMLHeadingElement;
  onMount(() => props.takesFocus && heading.focus({ preventScroll: true }));
  return (
    <fieldset class="sheet-question" data-together={props.together.names.join(' ')}>
      <legend>
        <h2 ref={heading} class="sheet-ask" tabindex="-1">
          {props.together.words.ask}
        </h2>
      </legend>
      {props.beside}
      <Show when={props.together.words.hint}>{(hint) => <p class="sheet-hint">{hint()}</p>}</Show>
      <Tiles count={2}>
        <Tile
          option={props.together.option}
          label={props.together.words.all}
          isChosen={false}
          onChoose={() => props.onAll()}
        />
        <WayTile act="one-by-one" label={props.together.words.apart} onPress={() => props.onApart()} />
      </Tiles>
    </fieldset>
  );
}
