import { createMemo, For, type JSX, Show } from 'solid-js';
import type { Clock } from '../../../shared/records/clock';
import type { Zone } from '../../../shared/records/zones';
import type { UnitSettings } from '../../../shared/units/quantity';
import { sayClock } from '../../parts/clockSaid';
import { useWords } from '../../parts/useWords';
import './clocks.css';

/** A running clock by the zone it is for. */
export interface ZoneClock {
  readonly zone: Zone;
  readonly clock: Clock;
  readonly strandNumber: number | null;
}

/** The other clocks of this client as rows; a tap makes one of them the large one. None is made anew by a tick. */
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
  const words = useWords();
  const zones = createMemo(() => props.clocks.map(({ zone }) => zone).filter((zone) => zone !== props.large));
  const find = (zone: Zone) => props.clocks.find((other) => other.zone === zone);
  const say = ({ clock, strandNumber }: ZoneClock) =>
    sayClock(clock, strandNumber, props.nowMs, words, props.units);
  return (
    <div class="clock-rows">
      <For each={zones()}>
        {(zone) => (
          <Show when={find(zone)}>
            {(other) => (
              <button
                type="button"
                class="clock-row"
                data-act={`show-${zone}`}
                data-clock={other().clock.id}
                data-due-at={other().clock.dueAtMs}
                data-tone={say(other()).tone}
                onClick={() => props.onChoose(zone)}
              >
                <span>
                  <strong>{say(other()).name}</strong> {say(other()).says}
                </span>
                <span class="clock-row-digits">{say(other()).digits}</span>
              </button>
            )}
          </Show>
        )}
      </For>
      {props.children}
    </div>
  );
}
