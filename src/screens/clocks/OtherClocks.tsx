import { createMemo, For, type JSX, Show } from 'solid-js';
import type { Clock } from '../../../shared/records/clock';
import type { Zone } from '../../../shared/records/zones';
import type { UnitSettings } from '../../../shared/units/quantity';
import { ClockFace } from '../../parts/ClockFace';
import './clocks.css';

/** A running clock by the zone it is for. */
export interface ZoneClock {
  readonly zone: Zone;
  readonly clock: Clock;
  readonly strandNumber: number | null;
}

/** The other clocks of this client, small; a tap makes one of them the large one. None is made anew by a tick. */
export function OtherClocks(props: {
  readonly clocks: readonly ZoneClock[];
  /** The zone that is shown large. */
  readonly large: Zone | undefined;
  readonly nowMs: number;
  readonly units: UnitSettings;
  readonly onChoose: (zone: Zone) => void;
  /** What stands beside them. */
  readonly children?: JSX.Element;
}) {
  const zones = createMemo(() => props.clocks.map(({ zone }) => zone).filter((zone) => zone !== props.large));
  const find = (zone: Zone) => props.clocks.find((other) => other.zone === zone);
  return (
    <div class="other-clocks">
      <For each={zones()}>
        {(zone) => (
          <Show when={find(zone)}>
            {(other) => (
              <button
                type="button"
                class="clock-choice"
                data-act={`show-${zone}`}
                onClick={() => props.onChoose(zone)}
              >
                <ClockFace
                  clock={other().clock}
                  strandNumber={other().strandNumber}
                  nowMs={props.nowMs}
                  units={props.units}
                  size="small"
                />
              </button>
            )}
          </Show>
        )}
      </For>
      {props.children}
    </div>
  );
}
