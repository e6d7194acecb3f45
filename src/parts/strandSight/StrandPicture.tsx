import { For, Show } from 'solid-js';
import { drawStrand } from './drawStrand';
import './strandSight.css';

/** How a strand looks, drawn: its colour by its undertone, rough edges, a sag where it stays long, a gap where it broke. */
export function StrandPicture(props: {
  readonly undertone: string;
  readonly fibre: 'sound' | 'rough' | 'gummy' | 'broken';
  /** Patchy or banded: darker places along it. */
  readonly evenness: 'even' | 'patchy' | 'banded';
  /** The picture as one text. */
  readonly said: string;
}) {
  const drawn = () => drawStrand(props.fibre);
  return (
    <svg
      class="strand-picture"
      viewBox="0 0 600 76"
      role="img"
      aria-label={props.said}
      data-fibre={props.fibre}
    >
      <For each={drawn().bodies}>
        {(body) => <path class="strand-body" data-undertone={props.undertone} d={body} />}
      </For>
      <Show when={props.evenness !== 'even' && props.fibre !== 'broken'}>
        <For each={shades[props.evenness]}>
          {([x, width]) => <rect class="strand-shade" x={x} y="22" width={width} height="32" rx="8" />}
        </For>
      </Show>
      <path class="strand-hairs" d={drawn().hairs} />
    </svg>
  );
}

const shades: Readonly<Record<'even' | 'patchy' | 'banded', readonly (readonly [number, number])[]>> = {
  even: [],
  patchy: [
    [90, 40],
    [236, 64],
    [420, 34],
  ],
  banded: [
    [140, 60],
    [380, 60],
  ],
};
