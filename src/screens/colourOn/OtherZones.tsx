import { createMemo, For, Show } from 'solid-js';
import type { Settings } from '../../../shared/records/settings';
import type { Zone } from '../../../shared/records/zones';
import { useWords } from '../../parts/useWords';
import type { ZoneAtScale } from '../mix/viewMix';
import { ZoneCard } from '../mix/ZoneCard';
import type { Sender } from '../sender';
import type { Inside } from './ColourOn';
import { OtherZoneActions } from './OtherZoneActions';

/** The zones that are not on the head: weighed and waiting, still to be weighed, or closed and why. */
export function OtherZones(props: {
  readonly zones: readonly ZoneAtScale[];
  readonly settings: Settings;
  readonly sender: Sender;
  readonly onInside: (inside: Inside) => void;
}) {
  const names = createMemo(() => props.zones.map(({ zone }) => zone));
  const find = (zone: Zone) => props.zones.find((each) => each.zone === zone);
  return (
    <div class="columns">
      <For each={names()}>
        {(zone) => (
          <Show when={find(zone)}>
            {(atScale) => (
              <Show when={isStandingBy(atScale())} fallback={<ClosedZone atScale={atScale()} />}>
                <div class="column">
                  <ZoneCard atScale={atScale()} settings={props.settings} />
                  <OtherZoneActions atScale={atScale()} sender={props.sender} onInside={props.onInside} />
                </div>
              </Show>
            )}
          </Show>
        )}
      </For>
    </div>
  );
}

/** Weighed, or open to be weighed: there is something to do for this zone. */
const isStandingBy = ({ permit, bowlState }: ZoneAtScale): boolean => permit.ok || bowlState === 'weighed';

/** A zone with nothing to do, and why, in one line. */
function ClosedZone(props: { readonly atScale: ZoneAtScale }) {
  const words = useWords();
  const why = () => {
    const { permit } = props.atScale;
    return permit.ok ? '' : words.refusals.permit[permit.error.code].what;
  };
  return (
    <p class="soft closed-zone" data-zone={props.atScale.zone} data-bowl={props.atScale.bowlState}>
      <strong>
        {words.general.zones[props.atScale.zone]}
        {': '}
        {words.mix.states[props.atScale.bowlState]}
      </strong>
      {'. '}
      {why()}
    </p>
  );
}
