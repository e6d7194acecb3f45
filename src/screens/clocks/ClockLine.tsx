import { Show } from 'solid-js';
import type { Clock } from '../../../shared/records/clock';
import type { UnitSettings } from '../../../shared/units/quantity';
import { ClockFace } from '../../parts/ClockFace';
import './clocks.css';

/** A clock that runs on while something is asked: in one line above it. */
export function ClockLine(props: {
  readonly clock: Clock | undefined;
  readonly strandNumber: number | null;
  readonly nowMs: number;
  readonly units: UnitSettings;
}) {
  return (
    <Show when={props.clock}>
      {(running) => (
        <div class="clock-line">
          <ClockFace
            clock={running()}
            strandNumber={props.strandNumber}
            nowMs={props.nowMs}
            units={props.units}
            size="small"
          />
        </div>
      )}
    </Show>
  );
}
