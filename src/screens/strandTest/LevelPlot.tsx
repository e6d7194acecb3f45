import { scaleLinear } from 'd3-scale';
import { area, line } from 'd3-shape';
import { createMemo, createUniqueId, Index, Show } from 'solid-js';
import type { LevelSeen } from '../../../shared/chemistry/liftReadings';
import { formatQuantity } from '../../../shared/units/format';
import type { UnitSettings } from '../../../shared/units/quantity';
import { useWords } from '../../parts/useWords';
import './levelPlot.css';
import type { LevelsView } from './viewLevels';
import type { LevelAhead, LiftView } from './viewLift';

/** Room of the drawing, in its own units: about one to a pixel. */
const left = 44;
const right = 356;
const top = 26;
const bottom = 150;

/**
 * The levels seen so far against the minutes. A line through them where a curve is drawn, else from one to the next;
 * dotted and with its band from the last look on, and nothing beyond the strand's own time.
 */
export function LevelPlot(props: {
  readonly levels: LevelsView;
  readonly lift: LiftView;
  readonly units: UnitSettings;
  /** Looks that nobody made in time. */
  readonly missed: number;
}) {
  const words = useWords();
  const said = () => words.strandTest.processing;
  const room = createUniqueId();
  const write = (value: number, quantity: 'level' | 'count' | 'minutes') =>
    formatQuantity(value, quantity, props.units, words.locale);
  const x = createMemo(() => scaleLinear([0, props.levels.minutes], [left, right]).clamp(true));
  const y = createMemo(() => scaleLinear([props.levels.lowest, props.levels.highest], [bottom, top]));
  const draw = (points: readonly LevelSeen[]) =>
    line<LevelSeen>()
      .x(({ atMin }) => x()(atMin))
      .y(({ level }) => y()(level))([...points]) ?? '';
  const drawBand = () =>
    area<LevelAhead>()
      .x(({ atMin }) => x()(atMin))
      .y0(({ low }) => y()(low))
      .y1(({ high }) => y()(high))([...props.lift.ahead]) ?? '';
  const drawn = () => (props.lift.fitted.length > 0 ? props.lift.fitted : props.levels.seen);
  const sayAhead = () => {
    const end = props.lift.ahead.at(-1);
    if (end === undefined) return [];
    const [level, low, high] = [end.level, end.low, end.high].map(toShownLevel);
    const minutes = write(Math.floor(end.atMin), 'minutes');
    return [
      words.strandTest.lift.ahead(
        write(level ?? 0, 'level'),
        write(low ?? 0, 'level'),
        write(high ?? 0, 'level'),
        minutes,
      ),
    ];
  };
  const readOut = () =>
    [
      ...props.levels.seen.map(({ atMin, level }) =>
        said().levelAfter(write(level, 'level'), write(Math.floor(atMin), 'minutes')),
      ),
      ...sayAhead(),
    ].join(', ') || said().noLook;
  return (
    <figure class="level-plot">
      <figcaption>
        <span>{said().levels}</span>
        <Show when={props.missed > 0}>
          <span data-line="missed">{words.clock.missedLooks(write(props.missed, 'count'))}</span>
        </Show>
      </figcaption>
      <svg viewBox="0 0 372 184" role="img" aria-label={readOut()}>
        <clipPath id={room}>
          <rect x={left} y={top} width={right - left} height={bottom - top} />
        </clipPath>
        <path class="level-band" d={drawBand()} clip-path={`url(#${room})`} />
        <path class="level-axes" d={`M${left} ${top - 12} V${bottom} H${right}`} />
        <path class="level-limit" d={`M${right} ${top} V${bottom}`} />
        <Show when={props.levels.target}>
          {(target) => (
            <>
              <line class="level-target" x1={left} x2={right} y1={y()(target())} y2={y()(target())} />
              <text x={right} y={y()(target()) - 8} text-anchor="end">
                {said().target(write(target(), 'level'))}
              </text>
            </>
          )}
        </Show>
        <path class="level-line" d={draw(drawn())} clip-path={`url(#${room})`} />
        <path class="level-ahead" d={draw(props.lift.ahead)} clip-path={`url(#${room})`} />
        <Index each={props.levels.seen}>
          {(seen) => <circle class="level-seen" cx={x()(seen().atMin)} cy={y()(seen().level)} r="8" />}
        </Index>
        <text x={left - 12} y={bottom + 4} text-anchor="end">
          {write(props.levels.lowest, 'level')}
        </text>
        <text x={left - 12} y={top + 8} text-anchor="end">
          {write(props.levels.highest, 'level')}
        </text>
        <text x={left} y={bottom + 30} text-anchor="middle">
          {write(0, 'count')}
        </text>
        <text x={right} y={bottom + 30} text-anchor="end">
          {write(props.levels.minutes, 'minutes')}
        </text>
      </svg>
    </figure>
  );
}

/** To the half level, as it is read; a level is never lighter than 10 or darker than 1. */
const toShownLevel = (level: number): number => Math.min(10, Math.max(1, Math.round(level * 2) / 2));
