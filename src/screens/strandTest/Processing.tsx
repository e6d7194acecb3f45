import { createEffect, createMemo, createSignal, For, Match, on, Show, Switch } from 'solid-js';
import { findSigns } from '../../../shared/records/gradeOutcome';
import type { StrandRecord } from '../../../shared/records/record';
import type { Zone } from '../../../shared/records/zones';
import { BigButton } from '../../parts/BigButton';
import { Caution } from '../../parts/Caution';
import { HandCaution } from '../../parts/HandCaution';
import { Refusal } from '../../parts/Refusal';
import { StepPage } from '../../parts/StepPage';
import { useWords } from '../../parts/useWords';
import { OtherClocks } from '../clocks/OtherClocks';
import '../layout.css';
import { MoreTime } from '../MoreTime';
import { createSender } from '../sender';
import type { StepProps } from '../stepProps';
import { Discard } from './Discard';
import { LookAtStrand } from './LookAtStrand';
import { OneOutcome } from './OneOutcome';
import { OneStrand } from './OneStrand';
import { ProcessingActions } from './ProcessingActions';
import { SkinTestLine } from './SkinTestLine';
import { StartStrand } from './StartStrand';
import { StrandOff } from './StrandOff';
import { TakeOff } from './TakeOff';
import { type RunningStrand, viewProcessing } from './viewProcessing';

export type Inside =
  | 'look'
  | 'takeOff'
  | 'discard'
  | 'moreTime'
  | 'another'
  /** A strand that is off already: what it said, or that it proves nothing. */
  | { readonly kind: 'outcome' | 'putAside'; readonly zone: Zone };

/** Strands in the mix: the one that wants something next is large, and the actions are for it. */
export function Processing(props: StepProps) {
  const [inside, setInside] = createSignal<Inside | null>(null);
  const [chosen, setChosen] = createSignal<Zone | null>(null);
  /** Of which strand the page inside is: another one that gets more urgent never takes its place. */
  const [zoneInside, setZoneInside] = createSignal<Zone | null>(null);
  const view = createMemo(() => viewProcessing(props.consultation, props.nowMs));
  const one = createMemo(() => view().running.find(({ zone }) => zone === chosen()) ?? view().running[0]);
  const leave = () => setInside(null);
  const another = () => (inside() === 'another' ? view().free.at(-1) : undefined);
  const goInside = (to: Inside) => {
    setZoneInside(one()?.zone ?? null);
    setInside(to);
  };
  const here = createMemo(() => view().running.find(({ zone }) => zone === zoneInside()));
  const isInside = (kind: Inside) => (inside() === kind ? here() : undefined);
  const offInside = (kind: 'outcome' | 'putAside') => {
    const open = inside();
    if (open === null || typeof open === 'string' || open.kind !== kind) return undefined;
    return view().off.find(({ zone }) => zone === open.zone);
  };
  const recording = createMemo(() => offInside('outcome'), undefined, { equals: isSameStrand });
  const name = createMemo(() => here()?.zone);

  /** It broke, or is off: nothing of it is open any more. */
  createEffect(
    on(name, (_now, before) => before !== undefined && isOfOne(inside()) && leave(), { defer: true }),
  );

  return (
    <Switch
      fallback={<Clocks {...props} view={view()} one={one()} onChoose={setChosen} onInside={goInside} />}
    >
      <Match when={another()} keyed>
        {(zone) => <StartStrand {...props} zone={zone} onClose={leave} />}
      </Match>
      <Match when={isInside('look') && name()} keyed>
        {(zone) => <LookAtStrand {...props} zone={zone} onClose={leave} />}
      </Match>
      <Match when={isInside('takeOff') && name()} keyed>
        {(zone) => <TakeOff {...props} zone={zone} onClose={leave} onDiscard={() => setInside('discard')} />}
      </Match>
      <Match when={isInside('discard') && name()} keyed>
        {(zone) => <Discard {...props} zone={zone} onClose={leave} />}
      </Match>
      <Match when={isInside('moreTime')?.clock.id} keyed>
        {(clockId) => <MoreTime {...props} clockId={clockId} onClose={leave} />}
      </Match>
      <Match when={recording()} keyed>
        {(strand) => (
          <OneOutcome
            {...props}
            strand={strand}
            others={view().off.length - 1}
            onClose={leave}
            onDiscard={() => setInside({ kind: 'putAside', zone: strand.zone })}
          />
        )}
      </Match>
      <Match when={offInside('putAside')?.zone} keyed>
        {(zone) => <Discard {...props} zone={zone} onClose={leave} />}
      </Match>
    </Switch>
  );
}

const isOfOne = (inside: Inside | null): boolean => typeof inside === 'string' && inside !== 'another';

/** Its record is made anew by every tap; it is the same strand for all that. */
const isSameStrand = (one: StrandRecord | undefined, other: StrandRecord | undefined): boolean =>
  one?.number === other?.number;

function Clocks(
  props: StepProps & {
    readonly view: ReturnType<typeof viewProcessing>;
    readonly one: RunningStrand | undefined;
    readonly onChoose: (zone: Zone) => void;
    readonly onInside: (inside: Inside) => void;
  },
) {
  const words = useWords();
  const said = () => words.strandTest.processing;
  const sender = createSender(props);
  const running = () =>
    props.view.running.map(({ zone, clock, strand }) => ({ zone, clock, strandNumber: strand.number }));
  const hasRows = () =>
    props.view.running.length > 1 ||
    props.view.off.length > 0 ||
    props.view.free.length > 0 ||
    (props.one?.mayExtendMin ?? 0) > 0;
  const hasWeakened = () => findSigns(props.one?.strand).hasWeakened;

  return (
    <StepPage
      page={props.page}
      title={said().title}
      {...(props.one === undefined
        ? {}
        : { also: said().snippedAt(words.strandTest.forms.strand.place.options[props.one.strand.place]) })}
      actions={
        <Show when={props.one}>
          {(one) => <ProcessingActions one={one()} sender={sender} onInside={props.onInside} />}
        </Show>
      }
    >
      <Show when={props.one}>
        {(one) => (
          <OneStrand
            consultation={props.consultation}
            settings={props.settings}
            nowMs={props.nowMs}
            one={one()}
          />
        )}
      </Show>
      <Show when={hasRows()}>
        <OtherClocks
          clocks={running()}
          large={props.one?.zone}
          nowMs={props.nowMs}
          units={props.settings.units}
          onChoose={props.onChoose}
        >
          <For each={props.view.off}>
            {(strand) => (
              <StrandOff
                strand={strand}
                units={props.settings.units}
                onOpen={() => props.onInside({ kind: 'outcome', zone: strand.zone })}
              />
            )}
          </For>
          <Show when={props.view.free.length > 0}>
            <BigButton act="another-strand" onPress={() => props.onInside('another')}>
              {said().another}
            </BigButton>
          </Show>
          <Show when={(props.one?.mayExtendMin ?? 0) > 0}>
            <BigButton act="more-time" onPress={() => props.onInside('moreTime')}>
              {said().moreTime}
            </BigButton>
          </Show>
        </OtherClocks>
      </Show>
      <SkinTestLine {...props} />
      {/* What was not taken stands where the hint stood; what she must heed stays. */}
      <Refusal refusal={sender.refusal()} />
      <Show
        when={hasWeakened()}
        fallback={
          <Show when={sender.refusal() === null}>
            <HandCaution caution={props.one?.reading.phase === 'over' ? 'outcome' : 'look'} />
          </Show>
        }
      >
        <Caution>
          <p>{said().stretchy}</p>
        </Caution>
      </Show>
    </StepPage>
  );
}
