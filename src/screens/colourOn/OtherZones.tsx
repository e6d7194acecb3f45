import { createMemo, For, Match, Show, Switch } from 'solid-js';
import type { ConsultationRecord } from '../../../shared/records/record';
import type { Settings } from '../../../shared/records/settings';
import { findUseByMs } from '../../../shared/records/useWithin';
import type { Zone } from '../../../shared/records/zones';
import { brand } from '../../../shared/units/brand';
import { formatMass, formatQuantity } from '../../../shared/units/format';
import { BigButton } from '../../parts/BigButton';
import { useWords } from '../../parts/useWords';
import { sayPoured } from '../bottleAndBowl';
import { findStuff } from '../findStuff';
import { sayHeld } from '../mix/sayHeld';
import { isFree, sayBowlState, type ZoneAtScale } from '../mix/viewMix';
import { createNotCalm, type NotCalm, WeighedActions } from '../mix/WeighedActions';
import type { Sender } from '../sender';
import { isFeltWeak, TonerWay } from '../toner/Toner';
import type { Inside } from './ColourOn';
import './colourOn.css';

/** The zones that are not on the head, a row each: weighed and waiting, still to be weighed, or closed and why. */
export function OtherZones(props: {
  readonly zones: readonly ZoneAtScale[];
  readonly record: ConsultationRecord;
  readonly settings: Settings;
  readonly sender: Sender;
  readonly onInside: (inside: Inside) => void;
}) {
  /** Her skin is one: what is said of it at one bowl holds for the others. */
  const notCalm = createNotCalm();
  const names = createMemo(() => props.zones.map(({ zone }) => zone));
  const find = (zone: Zone) => props.zones.find((each) => each.zone === zone);
  return (
    <For each={names()}>
      {(zone) => (
        <Show when={find(zone)}>
          {(atScale) => <OtherZone {...props} atScale={atScale()} notCalm={notCalm} />}
        </Show>
      )}
    </For>
  );
}

function OtherZone(props: {
  readonly atScale: ZoneAtScale;
  readonly notCalm: NotCalm;
  readonly record: ConsultationRecord;
  readonly settings: Settings;
  readonly sender: Sender;
  readonly onInside: (inside: Inside) => void;
}) {
  const words = useWords();
  const name = () => words.general.zones[props.atScale.zone];
  const isWeighed = () => props.atScale.bowlState === 'weighed';
  const isToMix = () => props.atScale.permit.ok && isFree(props.atScale.bowlState);
  const why = () => {
    const { permit, bowlState } = props.atScale;
    if (isFeltWeak(props.atScale)) return words.refusals.permit.stretchFails.what;
    return permit.ok || bowlState === 'rinsed' ? '' : words.refusals.permit[permit.error.code].what;
  };
  /** Said aloud before it goes on; whose head it is, and of what line, stands above. */
  const sayBowl = () => {
    const { bowl } = props.atScale;
    if (bowl === null) return '';
    const { units } = props.settings;
    const grams = formatMass(brand(bowl.colourG), units, words.locale);
    return [
      words.mix.weighedColour(grams, findStuff(props.settings, props.record.answers, bowl.line)),
      sayPoured(bowl, words, props.settings),
      formatQuantity(bowl.minutes, 'minutes', units, words.locale),
      words.mix.useBy(words.moments.time(findUseByMs(bowl, props.settings))),
    ].join(' · ');
  };
  const heldBy = () => sayHeld(props.atScale, props.record, words, words.colourOn.notCalmThen);
  return (
    <section class="zone-row" data-zone={props.atScale.zone} data-bowl={props.atScale.bowlState}>
      <div class="zone-row-words">
        <strong>
          {name()}
          {': '}
          {sayBowlState(props.atScale, words)}
        </strong>
        <Show when={isWeighed()} fallback={<span>{why()}</span>}>
          <Show
            when={heldBy() ?? (props.notCalm.isSaid() ? words.colourOn.notCalmThen : null)}
            fallback={
              <>
                <span>{sayBowl()}</span>
                <span>{words.colourOn.beforeMore}</span>
              </>
            }
          >
            {(why) => <strong class="held-up">{why()}</strong>}
          </Show>
        </Show>
      </div>
      <Switch>
        <Match when={isWeighed()}>
          <WeighedActions
            zone={props.atScale.zone}
            mayApply={heldBy() === null}
            sender={props.sender}
            notCalm={props.notCalm}
            isAside
          />
        </Match>
        <Match when={props.atScale.toner}>
          <TonerWay atScale={props.atScale} onToner={(zone) => props.onInside({ toner: zone })} />
        </Match>
        <Match when={isToMix()}>
          <BigButton
            act={`mix-${props.atScale.zone}`}
            onPress={() => props.onInside({ mix: props.atScale.zone })}
          >
            {words.mix.weighFor(name())}
          </BigButton>
        </Match>
      </Switch>
    </section>
  );
}
