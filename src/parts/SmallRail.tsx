import { For, Show } from 'solid-js';
import { type WayStep, waySteps } from '../../shared/records/steps';
import './rail.css';
import { type KnotReason, markStep } from './StrandRail';

const GAP = 36;
const KNOT_AFTER = waySteps.indexOf('mix');
const placeOf = (index: number): number => 18 + GAP * (index < KNOT_AFTER ? index : index + 1);

/** The strand in small, for a place on the bar; what it shows is said in words beside it. */
export function SmallRail(props: { readonly here: WayStep | null; readonly knot: KnotReason }) {
  const hereAt = () => (props.here === null ? 18 : placeOf(waySteps.indexOf(props.here)));
  return (
    <svg class="small-rail" viewBox="0 0 360 44" aria-hidden="true">
      <line class="small-to-come" x1={hereAt()} x2={placeOf(waySteps.length - 1)} y1="22" y2="22" />
      <Show when={props.here}>
        <line class="small-done" x1="18" x2={hereAt()} y1="22" y2="22" />
      </Show>
      <For each={waySteps}>
        {(step, index) => (
          <circle
            class="small-step"
            data-state={markStep(step, props.here)}
            cx={placeOf(index())}
            cy="22"
            r={markStep(step, props.here) === 'here' ? 11 : 5}
          />
        )}
      </For>
      <path
        class="small-knot"
        data-knot={props.knot === null ? 'untied' : 'tied'}
        d={props.knot === null ? 'M212 22 C222 12 232 32 248 22' : tied}
      />
    </svg>
  );
}

const tied = 'M212 30 C222 4 246 2 246 20 C246 34 228 36 226 24 C225 12 240 10 250 30';
