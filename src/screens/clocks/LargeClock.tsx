import type { JSX } from 'solid-js';
import type { Clock } from '../../../shared/records/clock';
import type { UnitSettings } from '../../../shared/units/quantity';
import { ClockFace } from '../../parts/ClockFace';
import './clocks.css';

/** The clock that wants something next, large, with what else is known of it beside its digits. */
export function LargeClock(props: {
  readonly clock: Clock;
  readonly strandNumber: number | null;
  readonly nowMs: number;
  readonly units: UnitSettings;
  readonly children: JSX.Element;
  /** One line below both. */
  readonly below?: JSX.Element;
}) {
  return (
    <div class="large-clock">
      <ClockFace
        clock={props.clock}
        strandNumber={props.strandNumber}
        nowMs={props.nowMs}
        units={props.units}
      >
        <div class="clock-aside">{props.children}</div>
        {props.below}
      </ClockFace>
    </div>
  );
}
