import { createMemo, Show } from 'solid-js';
import type { Clock } from '../../../shared/records/clock';
import type { UnitSettings } from '../../../shared/units/quantity';
import { useWords } from '../../parts/useWords';
import './levelPlot.css';
import { sayForecast } from './sayForecast';
import type { LiftView } from './viewLift';

/** When the level she wants is expected, in one sentence below digits and drawing; nothing where it is to come off. */
export function LiftLine(props: {
  readonly lift: LiftView;
  readonly target: number | null;
  readonly clock: Clock;
  readonly nowMs: number;
  readonly units: UnitSettings;
  /** Then the earliest leads, and a time is said only together with what stops it. */
  readonly isLightener: boolean;
}) {
  const words = useWords();
  const sentence = createMemo(() => {
    const { forecast } = props.lift;
    if (forecast === null || props.target === null) return null;
    return sayForecast(
      forecast,
      props.target,
      props.clock,
      props.nowMs,
      words,
      props.units,
      props.isLightener,
    );
  });
  const saysDries = () => props.isLightener && props.lift.forecast?.kind !== 'none';
  return (
    <Show when={sentence() !== null}>
      <p class="lift-line" data-line="forecast">
        <strong>{sentence()}</strong> <Show when={saysDries()}>{words.strandTest.lift.dries}</Show>
      </p>
    </Show>
  );
}
