import { For, Show } from 'solid-js';
import { placeName, room, type StrandScale, widthOf } from './room';
import type { MapStretch, StrandMapView } from './strandMapView';

const bottom = room.strandTop + room.strandHeight;

/** The strand with its bleach, what it hangs past, and how far the colour goes on it. */
export function StrandItself(props: {
  readonly view: Pick<StrandMapView, 'bleached' | 'scalp' | 'landmarks' | 'reach'>;
  readonly x: StrandScale;
}) {
  const widthOn = ({ fromCm, toCm }: MapStretch) => props.x(toCm) - props.x(fromCm);
  const middleOf = ({ fromCm, toCm }: MapStretch) => (props.x(fromCm) + props.x(toCm)) / 2;
  /** Its whole name where it has room, else what is left of it, else nothing: the text of the map says it. */
  const nameOn = (stretch: MapStretch) =>
    [stretch.name, stretch.short ?? ''].find((name) => widthOf(name) < widthOn(stretch)) ?? '';
  return (
    <>
      <rect
        class="map-strand"
        x={room.left}
        y={room.strandTop}
        width={room.right - room.left}
        height={room.strandHeight}
        rx={room.strandHeight / 2}
      />
      <For each={props.view.bleached}>
        {(stretch) => (
          <g data-bleached={stretch.id}>
            <rect
              class="map-bleached"
              x={props.x(stretch.fromCm)}
              y={room.strandTop + 3}
              width={widthOn(stretch)}
              height={room.strandHeight - 6}
              rx="4"
            />
            <text class="map-on-strand" x={middleOf(stretch)} y={room.strandTop + 20} text-anchor="middle">
              {nameOn(stretch)}
            </text>
          </g>
        )}
      </For>
      <text x={room.left} y={bottom + 28}>
        {props.view.scalp}
      </text>
      <For each={props.view.landmarks}>
        {({ cm, name }) => (
          <>
            <line class="map-tick" x1={props.x(cm)} x2={props.x(cm)} y1={bottom} y2={bottom + 8} />
            <text {...placeName(props.x(cm), name)} y={bottom + 28}>
              {name}
            </text>
          </>
        )}
      </For>
      <Show when={props.view.reach}>
        {(reach) => (
          <g data-map="reach">
            <path
              class="map-reach"
              d={`M${props.x(reach().fromCm)} ${room.reachY - 8} V${room.reachY} H${props.x(reach().toCm)} V${room.reachY - 8}`}
            />
            <text class="map-reach-name" {...placeName(middleOf(reach()), reach().name)} y={room.reachY + 22}>
              {reach().name}
            </text>
          </g>
        )}
      </Show>
    </>
  );
}
