import { scaleLinear } from 'd3-scale';
import { area, line } from 'd3-shape';
import { createMemo, For } from 'solid-js';
import { room, type StrandScale } from './room';
import type { MapPoint, StrandMapView } from './strandMapView';

/** Iron minutes along the strand: what they may be at the least and at the most, and the likely line. */
export function MinutesChart(props: {
  readonly view: Pick<StrandMapView, 'points' | 'ticks' | 'counts'>;
  readonly x: StrandScale;
}) {
  const y = createMemo(() => {
    const most = Math.max(...props.view.ticks.map(({ minutes }) => minutes), 1);
    return scaleLinear([0, most], [room.chartBottom, room.chartTop]).clamp(true);
  });
  const drawBand = () =>
    area<MapPoint>()
      .x(({ cm }) => props.x(cm))
      .y0(({ low }) => y()(low))
      .y1(({ high }) => y()(high))([...props.view.points]) ?? '';
  const drawLine = () =>
    line<MapPoint>()
      .x(({ cm }) => props.x(cm))
      .y(({ typical }) => y()(typical))([...props.view.points]) ?? '';
  return (
    <>
      <text x={0} y={room.countsY}>
        {props.view.counts}
      </text>
      <For each={props.view.ticks}>
        {({ minutes, name }) => (
          <>
            <line class="map-grid" x1={room.left} x2={room.right} y1={y()(minutes)} y2={y()(minutes)} />
            <text x={room.left - 8} y={y()(minutes) + 7} text-anchor="end">
              {name}
            </text>
          </>
        )}
      </For>
      <path class="map-band" d={drawBand()} />
      <path class="map-line" d={drawLine()} />
    </>
  );
}
