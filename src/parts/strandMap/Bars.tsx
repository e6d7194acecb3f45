import { For } from 'solid-js';
import { placeName, room, type StrandScale } from './room';
import type { MapStretch } from './strandMapView';

/** No bar is narrower than this: a sliver at the tip still shows. */
const NARROWEST = 6;

/** For what a tool was set hot enough, from where on the strand outwards. */
export function Bars(props: { readonly reached: readonly MapStretch[]; readonly x: StrandScale }) {
  return (
    <For each={props.reached}>
      {(stretch, row) => {
        const top = () => room.barsFrom + row() * room.barHeight - 8;
        const from = () => Math.min(props.x(stretch.fromCm), room.right - NARROWEST);
        return (
          <g data-reached={stretch.id}>
            <rect
              class="map-reached"
              x={from()}
              y={top()}
              width={props.x(stretch.toCm) - from()}
              height={room.barHeight - 6}
              rx="8"
            />
            <text {...placeName((from() + props.x(stretch.toCm)) / 2, stretch.name)} y={top() + 20}>
              {stretch.name}
            </text>
          </g>
        );
      }}
    </For>
  );
}
