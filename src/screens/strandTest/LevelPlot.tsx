import { createMemo, Index, Show } from 'solid-js';
import type { ConsultationRecord, StrandRecord } from '../../../shared/records/record';
import { formatQuantity } from '../../../shared/units/format';
import type { UnitSettings } from '../../../shared/units/quantity';
import { useWords } from '../../parts/useWords';
import './levelPlot.css';
import { viewLevels } from './viewLevels';

/** Room of the drawing, in its own units: about one to a pixel. */
const left = 44;
const right = 356;
const top = 26;
const bottom = 150;

/** The levels seen so far against the minutes: what was read, and no line beyond it. */
export function LevelPlot(props: {
  readonly record: ConsultationRecord;
  readonly strand: StrandRecord;
  readonly units: UnitSettings;
  /** Looks that nobody made in time. */
  readonly missed: number;
}) {
  const words = useWords();
  const said = () => words.strandTest.processing;
  const view = createMemo(() => viewLevels(props.record, props.strand));
  const write = (value: number, quantity: 'level' | 'count' | 'minutes') =>
    formatQuantity(value, quantity, props.units, words.locale);
  const placeX = (atMin: number) => left + (Math.min(atMin / view().minutes, 1) || 0) * (right - left);
  const placeY = (level: number) =>
    bottom - ((level - view().lowest) / (view().highest - view().lowest)) * (bottom - top);
  const line = () =>
    view()
      .seen.map(({ atMin, level }) => `${placeX(atMin)},${placeY(level)}`)
      .join(' ');
  const readOut = () =>
    view()
      .seen.map(({ atMin, level }) =>
        said().levelAfter(write(level, 'level'), write(Math.floor(atMin), 'minutes')),
      )
      .join(', ') || said().noLook;
  return (
    <figure class="level-plot">
      <figcaption>
        <span>{said().levels}</span>
        <Show when={props.missed > 0}>
          <span data-line="missed">{words.clock.missedLooks(write(props.missed, 'count'))}</span>
        </Show>
      </figcaption>
      <svg viewBox="0 0 372 184" role="img" aria-label={readOut()}>
        <path class="level-axes" d={`M${left} ${top - 12} V${bottom} H${right}`} />
        <Show when={view().target}>
          {(target) => (
            <>
              <line class="level-target" x1={left} x2={right} y1={placeY(target())} y2={placeY(target())} />
              <text x={right} y={placeY(target()) - 8} text-anchor="end">
                {said().target(write(target(), 'level'))}
              </text>
            </>
          )}
        </Show>
        <polyline class="level-line" points={line()} />
        <Index each={view().seen}>
          {(seen) => <circle class="level-seen" cx={placeX(seen().atMin)} cy={placeY(seen().level)} r="8" />}
        </Index>
        <text x={left - 12} y={bottom + 4} text-anchor="end">
          {write(view().lowest, 'level')}
        </text>
        <text x={left - 12} y={top + 8} text-anchor="end">
          {write(view().highest, 'level')}
        </text>
        <text x={left} y={bottom + 30} text-anchor="middle">
          {write(0, 'count')}
        </text>
        <text x={right} y={bottom + 30} text-anchor="end">
          {write(view().minutes, 'minutes')}
        </text>
      </svg>
    </figure>
  );
}
