import { createMemo, createSignal, For, Match, Show, Switch } from 'solid-js';
import type { Zone } from '../../../shared/records/zones';
import { formatQuantity } from '../../../shared/units/format';
import { BigButton } from '../../parts/BigButton';
import { Caution } from '../../parts/Caution';
import { ClockFace } from '../../parts/ClockFace';
import { Refusal } from '../../parts/Refusal';
import { StepPage } from '../../parts/StepPage';
import { useWords } from '../../parts/useWords';
import { MoreTime } from '../MoreTime';
import { BowlPage } from '../mix/BowlPage';
import { isFree, type ZoneAtScale } from '../mix/viewMix';
import { ZoneCard } from '../mix/ZoneCard';
import '../layout.css';
import { createSender } from '../sender';
import type { StepProps } from '../stepProps';
import '../strandTest/processing.css';
import { HeadActions } from './HeadActions';
import { LookAtHead } from './LookAtHead';
import { OtherZoneActions } from './OtherZoneActions';
import { type BowlOnHead, type HeadView, viewHead } from './viewHead';

export type Inside = 'look' | 'moreTime' | { readonly mix: Zone };

/** What is on the head: the zone that wants something next is large, and the actions are for it. */
export function ColourOn(props: StepProps) {
  const [inside, setInside] = createSignal<Inside | null>(null);
  const [chosen, setChosen] = createSignal<Zone | null>(null);
  const view = createMemo(() => viewHead(props.consultation, props.settings, props.nowMs));
  const one = createMemo(() => view().on.find(({ bowl }) => bowl.zone === chosen()) ?? view().on[0]);
  const leave = () => setInside(null);
  const mixing = () => {
    const open = inside();
    if (open === null || typeof open === 'string') return undefined;
    const zone = view().others.find((each) => each.zone === open.mix);
    return zone?.permit.ok === true && isFree(zone.bowlState) ? zone.zone : undefined;
  };
  return (
    <Switch
      fallback={<Head {...props} view={view()} one={one()} onChoose={setChosen} onInside={setInside} />}
    >
      <Match when={mixing()} keyed>
        {(zone) => <BowlPage {...props} zone={zone} others={[]} onClose={leave} />}
      </Match>
      <Match when={inside() === 'look' && one()?.bowl.zone} keyed>
        {(zone) => <LookAtHead {...props} zone={zone} onClose={leave} />}
      </Match>
      <Match when={inside() === 'moreTime' && one()?.clock.id} keyed>
        {(clockId) => <MoreTime {...props} clockId={clockId} onClose={leave} />}
      </Match>
    </Switch>
  );
}

function Head(
  props: StepProps & {
    readonly view: HeadView;
    readonly one: BowlOnHead | undefined;
    readonly onChoose: (zone: Zone) => void;
    readonly onInside: (inside: Inside) => void;
  },
) {
  const words = useWords();
  const sender = createSender(props);
  const others = createMemo(() => props.view.others.map(({ zone }) => zone));
  const find = (zone: Zone) => props.view.others.find((each) => each.zone === zone);
  const countLooks = (one: BowlOnHead) =>
    words.colourOn.lookedTimes(
      formatQuantity(one.bowl.looks.length, 'count', props.settings.units, words.locale),
    );
  return (
    <StepPage
      page={props.page}
      title={words.colourOn.title}
      actions={
        <Show when={props.one}>
          {(one) => <HeadActions one={one()} sender={sender} onInside={props.onInside} />}
        </Show>
      }
    >
      <Show when={props.one}>
        {(one) => (
          <div class="large-clock">
            <ClockFace
              clock={one().clock}
              strandNumber={null}
              nowMs={props.nowMs}
              units={props.settings.units}
            >
              <div class="clock-aside">
                <p>{words.colourOn.mixedAt(words.moments.time(one().bowl.atMs))}</p>
                <p>{countLooks(one())}</p>
                <Show when={one().mayExtendMin > 0}>
                  <BigButton act="more-time" onPress={() => props.onInside('moreTime')}>
                    {words.colourOn.moreTime}
                  </BigButton>
                </Show>
              </div>
            </ClockFace>
          </div>
        )}
      </Show>
      <Show when={props.view.on.length > 1}>
        <div class="other-clocks">
          <For each={props.view.on.filter(({ bowl }) => bowl.zone !== props.one?.bowl.zone)}>
            {(other) => (
              <button
                type="button"
                class="clock-choice"
                data-act={`show-${other.bowl.zone}`}
                onClick={() => props.onChoose(other.bowl.zone)}
              >
                <ClockFace
                  clock={other.clock}
                  strandNumber={null}
                  nowMs={props.nowMs}
                  units={props.settings.units}
                  size="small"
                />
              </button>
            )}
          </For>
        </div>
      </Show>
      <Caution>
        <p>{words.colourOn.caution}</p>
      </Caution>
      <div class="columns">
        <For each={others()}>
          {(zone) => (
            <Show when={find(zone)}>
              {(atScale) => (
                <Show when={isStandingBy(atScale())} fallback={<ClosedZone atScale={atScale()} />}>
                  <div class="column">
                    <ZoneCard atScale={atScale()} settings={props.settings} />
                    <OtherZoneActions atScale={atScale()} sender={sender} onInside={props.onInside} />
                  </div>
                </Show>
              )}
            </Show>
          )}
        </For>
      </div>
      <Refusal refusal={sender.refusal()} />
    </StepPage>
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
