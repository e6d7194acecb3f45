import { scaleLinear } from 'd3-scale';
import { For } from 'solid-js';
import type { SaidRow } from './viewTaught';

/** Room of the drawing, in its own units: about one to a pixel on a tablet. */
const room = { width: 600, left: 120, right: 370, told: 388, head: 34, row: 40 } as const;
const half = 11;

const x = scaleLinear([0, 1], [room.left, room.right]).clamp(true);

/** A row in words. */
export interface RowWords {
  /** What was said of these strands, "10–20 %". */
  readonly said: string;
  /** What came, "3 of 41, fits". */
  readonly seen: string;
}

/**
 * Said against seen, a row for each: an open diamond for what was said, a dot for the share that broke on a bar of where the
 * true one may lie. Shapes tell them apart, and the row says in words how it came out.
 */
export function SaidAndSeen(props: {
  readonly rows: readonly SaidRow[];
  readonly say: (row: SaidRow) => RowWords;
  /** Names of the marks above the rows: 0, 50 and 100 %. */
  readonly ticks: readonly { readonly share: number; readonly name: string }[];
  /** The whole picture in words, for whoever does not see it. */
  readonly label: string;
}) {
  const height = () => room.head + props.rows.length * room.row;
  return (
    <svg class="said-seen" viewBox={`0 0 ${room.width} ${height()}`} role="img" aria-label={props.label}>
      <For each={props.ticks}>
        {({ share, name }) => (
          <>
            <line class="said-seen-grid" x1={x(share)} x2={x(share)} y1={room.head - 6} y2={height()} />
            <text x={x(share)} y={20} text-anchor="middle">
              {name}
            </text>
          </>
        )}
      </For>
      <For each={props.rows}>
        {(row, at) => {
          const y = () => room.head + (at() + 0.5) * room.row;
          const words = () => props.say(row);
          const diamond = () => {
            const middle = x(row.said);
            return `M${middle - half} ${y()} L${middle} ${y() - half} L${middle + half} ${y()} L${middle} ${y() + half} Z`;
          };
          return (
            <g data-row={row.from} data-fits={row.fits}>
              <text x={room.left - 14} y={y() + 7} text-anchor="end">
                {words().said}
              </text>
              <line class="said-seen-bar" x1={x(row.seen.low)} x2={x(row.seen.high)} y1={y()} y2={y()} />
              <path class="said-seen-said" d={diamond()} />
              <circle class="said-seen-dot" cx={x(row.seen.share)} cy={y()} r={6} />
              <text x={room.told} y={y() + 7}>
                {words().seen}
              </text>
            </g>
          );
        }}
      </For>
    </svg>
  );
}
