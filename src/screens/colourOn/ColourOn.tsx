import { createMemo, createSignal, For, Match, Show, Switch } from 'solid-js';
import { areRootsToCome } from '../../../shared/judgement/rootsLast';
import { findBreakOnHead } from '../../../shared/records/headLooks';
import type { BowlRecord } from '../../../shared/records/record';
import { findUseByMs } from '../../../shared/records/useWithin';
import type { Zone } from '../../../shared/records/zones';
import { formatQuantity } from '../../../shared/units/format';
import { BigButton } from '../../parts/BigButton';
import { Caution } from '../../parts/Caution';
import { HandCaution } from '../../parts/HandCaution';
import { Refusal } from '../../parts/Refusal';
import { StepPage } from '../../parts/StepPage';
import { useWords } from '../../parts/useWords';
import type { CautionId } from '../../words/en/cautions';
import { LargeClock } from '../clocks/LargeClock';
import { OtherClocks } from '../clocks/OtherClocks';
import { findStuff } from '../findStuff';
import { isOpenNow } from '../isOpenNow';
import { MoreTime } from '../MoreTime';
import { BowlPage } from '../mix/BowlPage';
import { isFree } from '../mix/viewMix';
import '../layout.css';
import { createSender } from '../sender';
import type { StepProps } from '../stepProps';
import { listStandingStops } from '../stopped/viewStopped';
import { Toner } from '../toner/Toner';
import { HeadActions } from './HeadActions';
import { LookAtHead } from './LookAtHead';
import { OtherZones } from './OtherZones';
import { type BowlOnHead, type HeadView, viewHead } from './viewHead';

export type Inside = 'look' | 'moreTime' | { readonly mix: Zone } | { readonly toner: Zone };

/** What is on the head: the zone that wants something next is large, and the actions are for it. */
export function ColourOn(props: StepProps) {
  const [inside, setInside] = createSignal<Inside | null>(null);
  const [chosen, setChosen] = createSignal<Zone | null>(null);
  const view = createMemo(() => viewHead(props.consultation, props.settings, props.nowMs));
  const one = createMemo(() => view().on.find(({ bowl }) => bowl.zone === chosen()) ?? view().on[0]);
  const leave = () => setInside(null);
  const mixing = () => {
    const open = inside();
    if (open === null || typeof open === 'string' || !('mix' in open)) return undefined;
    const zone = view().others.find((each) => each.zone === open.mix);
    return zone?.permit.ok === true && isFree(zone.bowlState) ? zone.zone : undefined;
  };
  const toning = () => {
    const open = inside();
    if (open === null || typeof open === 'string' || !('toner' in open)) return undefined;
    return view().others.find((each) => each.zone === open.toner && each.toner !== null)?.zone;
  };
  return (
    <Switch
      fallback={<Head {...props} view={view()} one={one()} onChoose={setChosen} onInside={setInside} />}
    >
      <Match when={mixing()} keyed>
        {(zone) => <BowlPage {...props} zone={zone} onClose={leave} isFromHead />}
      </Match>
      <Match when={toning()} keyed>
        {(zone) => <Toner {...props} zone={zone} onClose={leave} />}
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
  const running = () =>
    props.view.on.map(({ bowl, clock }) => ({ zone: bowl.zone, clock, strandNumber: null }));
  const write = (count: number) => formatQuantity(count, 'count', props.settings.units, words.locale);
  const useByMs = (bowl: BowlRecord) => findUseByMs(bowl, props.settings);
  /** The roots are still bare, and there is time for them and a mix that is fresh enough. */
  const mayTakeRoots = (bowl: BowlRecord, { phase }: BowlOnHead['reading']) =>
    (phase === 'running' || phase === 'lookDue') && props.nowMs <= useByMs(bowl);
  const sayRoots = (bowl: BowlRecord, reading: BowlOnHead['reading']): readonly string[] => {
    if (!areRootsToCome(answers(), bowl)) return [];
    return [
      mayTakeRoots(bowl, reading)
        ? words.colourOn.rootsToCome(words.moments.time(useByMs(bowl)))
        : words.colourOn.rootsTooLate,
    ];
  };
  const mayTellAllOn = ({ bowl, reading }: BowlOnHead) =>
    bowl.allOnAtMs === null &&
    reading.phase !== 'over' &&
    (!areRootsToCome(answers(), bowl) || mayTakeRoots(bowl, reading));
  /** When it was weighed and begun, with or without heat, and how often somebody looked. */
  const sayHead = ({ bowl, clock, reading }: BowlOnHead): readonly string[] => [
    [
      words.colourOn.mixedAt(words.moments.time(bowl.atMs)),
      words.colourOn.onSince(words.moments.time(clock.startedAtMs)),
      ...(bowl.allOnAtMs === null ? [] : [words.colourOn.allOnSince(words.moments.time(bowl.allOnAtMs))]),
    ].join(', '),
    ...sayRoots(bowl, reading),
    bowl.kind === 'toner' ? words.colourOn.toner : words.mix.headHeat[bowl.heat],
    ...(bowl.allOnAtMs === null ? [] : [words.colourOn.fromBegun]),
    bowl.looks.at(-1)?.hair === 'stretchy'
      ? words.colourOn.hairStretchy
      : words.colourOn.lookedTimes(write(bowl.looks.length)),
    ...(reading.missedLooks === 0 ? [] : [words.clock.missedLooks(write(reading.missedLooks))]),
  ];
  const sayAllOn = (zone: Zone) => sender.send({ type: 'BOWL_ALL_ON', answers: { zone } });
  const answers = () => props.consultation.record.answers;
  /** What she told, or what showed, only now, and stops her for good: the head is rinsed first. */
  const stop = createMemo(() => listStandingStops(props.consultation.record, props.settings)[0]?.rule);
  /** Once something speaks against the plan, or its time is over, nothing stays on longer, whatever the maker allows. */
  const mayExtend = ({ mayExtendMin, clock, reading }: BowlOnHead) =>
    mayExtendMin > 0 &&
    reading.phase !== 'over' &&
    isOpenNow(
      props.consultation,
      { type: 'CLOCK_EXTENDED', answers: { clock: clock.id, minutes: '1', reason: 'makerSaysSo' } },
      props.settings,
      props.nowMs,
    );
  /** Where another bowl stands weighed, its own line says what is to be heeded. */
  const isAnyWeighed = () => props.view.others.some(({ bowlState }) => bowlState === 'weighed');
  /** Where the hair breaks under what is on. */
  const breaking = (): Zone | undefined =>
    props.view.on.find(({ bowl }) => findBreakOnHead(bowl) !== undefined)?.bowl.zone;
  /** The basin waits for no other bowl. */
  const caution = (): CautionId | null => {
    const { one } = props;
    if (one === undefined) return null;
    if (one.reading.phase === 'over') return 'overdue';
    if (one.reading.phase === 'nearlyDue') return 'basin';
    if (isAnyWeighed()) return null;
    return findStuff(props.settings, answers(), one.bowl.line) === 'lightener' ? 'onHead' : 'onHeadColour';
  };
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
          <LargeClock
            clock={one().clock}
            strandNumber={null}
            nowMs={props.nowMs}
            units={props.settings.units}
          >
            <For each={sayHead(one())}>{(line) => <p class="clock-aside-line">{line}</p>}</For>
            <Show when={mayTellAllOn(one())}>
              <BigButton act="all-on" onPress={() => void sayAllOn(one().bowl.zone)}>
                {areRootsToCome(answers(), one().bowl) ? words.colourOn.rootsOn : words.colourOn.allOn}
              </BigButton>
            </Show>
            <Show when={mayExtend(one())}>
              <BigButton act="more-time" onPress={() => props.onInside('moreTime')}>
                {words.colourOn.moreTime}
              </BigButton>
            </Show>
          </LargeClock>
        )}
      </Show>
      <Show when={props.view.on.length > 1}>
        <OtherClocks
          clocks={running()}
          large={props.one?.bowl.zone}
          nowMs={props.nowMs}
          units={props.settings.units}
          onChoose={props.onChoose}
        />
      </Show>
      <Switch fallback={<Show when={caution()}>{(what) => <HandCaution caution={what()} />}</Show>}>
        <Match when={stop()}>
          {(rule) => (
            <Caution kind="stop">
              <p data-stopped-by={rule()}>
                <strong>{words.colourOn.rinseNow}</strong> {words.rules[rule()].what}
              </p>
            </Caution>
          )}
        </Match>
        <Match when={breaking()}>
          {(zone) => (
            <Caution kind="stop">
              <p data-breaks={zone()}>
                <strong>{words.colourOn.hairBreaks(words.general.zones[zone()])}</strong>
              </p>
            </Caution>
          )}
        </Match>
      </Switch>
      <OtherZones
        zones={props.view.others}
        record={props.consultation.record}
        settings={props.settings}
        sender={sender}
        onInside={props.onInside}
      />
      <Refusal refusal={sender.refusal()} />
    </StepPage>
  );
}
