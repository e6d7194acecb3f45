import { For } from 'solid-js';
import { room, type StrandScale } from './room';
import type { StrandMapView } from './strandMapView';

const WIDTH = 60;

/** Two blades that cross and their rings, in the left half of a flag. */
const scissors = 'M12 7 L29 24 M29 10 L12 27 M31.5 24 a3.5 3.5 0 1 0 0 .1 M31.5 10 a3.5 3.5 0 1 0 0 .1';

/** Where to snip: a numbered flag with scissors, and a cut line down to the strand. */
export function Flags(props: { readonly snips: StrandMapView['snips']; readonly x: StrandScale }) {
  /** Flags stand side by side: one that would cover the one before it moves on. */
  const lefts = () => {
    const order = props.snips
      .map(({ cm }, index) => ({ index, at: props.x(cm) - WIDTH / 2 }))
      .sort((one, other) => other.at - one.at);
    const placed: number[] = [];
    let right: number = room.width;
    for (const { index, at } of order) {
      right = Math.min(at, right - WIDTH);
      placed[index] = right;
      right -= 4;
    }
    return placed;
  };
  return (
    <For each={props.snips}>
      {({ cm, name }, index) => (
        <g data-map="snip">
          <line
            class="map-cut"
            x1={props.x(cm)}
            x2={props.x(cm)}
            y1={room.flagHeight}
            y2={room.strandTop + room.strandHeight}
          />
          <g transform={`translate(${lefts()[index()] ?? 0} 2)`}>
            <rect class="map-flag" width={WIDTH} height={room.flagHeight} rx={room.flagHeight / 2} />
            <path class="map-scissors" d={scissors} />
            <text class="map-flag-name" x={44} y={25} text-anchor="middle">
              {name}
            </text>
          </g>
        </g>
      )}
    </For>
  );
}
