import { scaleLinear } from 'd3-scale';
import { area, line } from 'd3-shape';
import { createMemo, For, Show } from 'solid-js';
import './strandMap.css';

/** One place along the strand, cm from the scalp, and the iron minutes there. */
export interface MapPoint {
  readonly cm: number;
  readonly low: number;
  readonly typical: number;
  readonly high: number;
}

/** From here to there along the strand, and what to call it. */
export interface MapStretch {
  readonly id: string;
  readonly fromCm: number;
  readonly toCm: number;
  readonly name: string;
}

/** Everything that is drawn, in words already: the picture computes nothing but places. */
export interface StrandMapView {
  readonly lengthCm: number;
  readonly points: readonly MapPoint[];
  /** What the lines above the strand count. */
  readonly counts: string;
  /** Minutes at which a line is drawn, each with its words. */
  readonly ticks: readonly { readonly minutes: number; readonly name: string }[];
  readonly landmarks: readonly { readonly cm: number; readonly name: string }[];
  readonly scalp: string;
  readonly bleached: readonly MapStretch[];
  readonly reach: MapStretch | null;
  readonly reached: readonly MapStretch[];
  readonly snips: readonly { readonly cm: number; readonly name: string }[];
  /** The whole picture as one sentence. */
  readonly said: string;
}

/** Room of the drawing, in its own units: about one to a pixel on a tablet. */
const width = 600;
const left = 56;
const right = 584;
const chartTop = 52;
const chartBottom = 196;
const strandTop = 204;
const strandHeight = 26;
const reachY = 276;
const rowsFrom = 312;
const rowHeight = 34;

const flagWidth = 60;

/** Two blades that cross and their rings, in the left half of a flag. */
const scissors = 'M12 7 L29 24 M29 10 L12 27 M31.5 24 a3.5 3.5 0 1 0 0 .1 M31.5 10 a3.5 3.5 0 1 0 0 .1';

/** About so wide is a letter of the map, for whether a name fits where it belongs. */
const LETTER = 10.4;

/** Which end of its stretch a name is written from, so that it stays on the paper. */
const anchorOf = (middle: number, name: string): { x: number; anchor: 'start' | 'middle' | 'end' } => {
  const half = (name.length * LETTER) / 2;
  if (middle - half < left) return { x: left, anchor: 'start' };
  if (middle + half > right) return { x: right, anchor: 'end' };
  return { x: middle, anchor: 'middle' };
};

/**
 * The strand from the scalp to the tip: iron minutes above it as a band with its likely line, old bleach on it, the
 * landmarks, how far the colour goes, which heat was reached from where, and where to snip.
 */
export function StrandMap(props: { readonly view: StrandMapView }) {
  const x = createMemo(() => scaleLinear([0, props.view.lengthCm], [left, right]).clamp(true));
  const y = createMemo(() => {
    const most = Math.max(...props.view.ticks.map(({ minutes }) => minutes), 1);
    return scaleLinear([0, most], [chartBottom, chartTop]).clamp(true);
  });
  const drawBand = () =>
    area<MapPoint>()
      .x(({ cm }) => x()(cm))
      .y0(({ low }) => y()(low))
      .y1(({ high }) => y()(high))([...props.view.points]) ?? '';
  const drawLine = () =>
    line<MapPoint>()
      .x(({ cm }) => x()(cm))
      .y(({ typical }) => y()(typical))([...props.view.points]) ?? '';
  const height = () => rowsFrom - 8 + Math.max(props.view.reached.length, 0) * rowHeight;
  const middleOf = ({ fromCm, toCm }: MapStretch) => (x()(fromCm) + x()(toCm)) / 2;
  return (
    <svg class="strand-map" viewBox={`0 0 ${width} ${height()}`} role="img" aria-label={props.view.said}>
      <text x={0} y={24}>
        {props.view.counts}
      </text>
      <For each={props.view.ticks}>
        {({ minutes, name }) => (
          <>
            <line class="map-grid" x1={left} x2={right} y1={y()(minutes)} y2={y()(minutes)} />
            <text x={left - 8} y={y()(minutes) + 7} text-anchor="end">
              {name}
            </text>
          </>
        )}
      </For>
      <path class="map-band" d={drawBand()} />
      <path class="map-line" d={drawLine()} />
      <rect
        class="map-strand"
        x={left}
        y={strandTop}
        width={right - left}
        height={strandHeight}
        rx={strandHeight / 2}
      />
      <For each={props.view.bleached}>
        {(stretch) => (
          <g data-bleached={stretch.id}>
            <rect
              class="map-bleached"
              x={x()(stretch.fromCm)}
              y={strandTop + 4}
              width={x()(stretch.toCm) - x()(stretch.fromCm)}
              height={strandHeight - 8}
              rx="4"
            />
            <Show when={x()(stretch.toCm) - x()(stretch.fromCm) > stretch.name.length * LETTER}>
              <text class="map-on-strand" x={middleOf(stretch)} y={strandTop + 20} text-anchor="middle">
                {stretch.name}
              </text>
            </Show>
          </g>
        )}
      </For>
      <text x={left} y={strandTop + strandHeight + 26}>
        {props.view.scalp}
      </text>
      <For each={props.view.landmarks}>
        {({ cm, name }) => (
          <>
            <line
              class="map-tick"
              x1={x()(cm)}
              x2={x()(cm)}
              y1={strandTop + strandHeight}
              y2={strandTop + strandHeight + 8}
            />
            <text
              x={anchorOf(x()(cm), name).x}
              y={strandTop + strandHeight + 28}
              text-anchor={anchorOf(x()(cm), name).anchor}
            >
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
              d={`M${x()(reach().fromCm)} ${reachY - 8} V${reachY} H${x()(reach().toCm)} V${reachY - 8}`}
            />
            <text
              class="map-reach-name"
              x={anchorOf(middleOf(reach()), reach().name).x}
              y={reachY + 22}
              text-anchor={anchorOf(middleOf(reach()), reach().name).anchor}
            >
              {reach().name}
            </text>
          </g>
        )}
      </Show>
      <For each={props.view.reached}>
        {(stretch, row) => {
          const top = () => rowsFrom + row() * rowHeight - 8;
          const name = () => anchorOf(middleOf(stretch), stretch.name);
          return (
            <g data-reached={stretch.id}>
              <rect
                class="map-reached"
                x={x()(stretch.fromCm)}
                y={top()}
                width={Math.max(x()(stretch.toCm) - x()(stretch.fromCm), 6)}
                height={rowHeight - 6}
                rx="8"
              />
              <text x={name().x} y={top() + 20} text-anchor={name().anchor}>
                {stretch.name}
              </text>
            </g>
          );
        }}
      </For>
      <For each={props.view.snips}>
        {({ cm, name }) => (
          <g data-map="snip">
            <line class="map-cut" x1={x()(cm)} x2={x()(cm)} y1={34} y2={strandTop + strandHeight} />
            <g transform={`translate(${Math.min(x()(cm) - flagWidth / 2, width - flagWidth)} 2)`}>
              <rect class="map-flag" width={flagWidth} height={34} rx={17} />
              <path class="map-scissors" d={scissors} />
              <text class="map-flag-name" x={44} y={25} text-anchor="middle">
                {name}
              </text>
            </g>
          </g>
        )}
      </For>
    </svg>
  );
}
