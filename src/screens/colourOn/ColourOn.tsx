import { createMemo, createSignal, For, Match, Show, Switch } from 'solid-js';
import { areRootsToCome } from '../../../shared/judgement/rootsLast';
import type { Zone } from '../../../shared/records/zones';
import { BigButton } from '../../parts/BigButton';
import { Refusal } from '../../parts/Refusal';
import { StepPage } from '../../parts/StepPage';
import { useWords } from '../../parts/useWords';
import { LargeClock } from '../clocks/LargeClock';
import { OtherClocks } from '../clocks/OtherClocks';
import { isOpenNow } from '../isOpenNow';
import { MoreTime } from '../MoreTime';
import { BowlPage } from '../mix/BowlPage';
import { isFree } from '../mix/viewMix';
import '../layout.css';
import { createSender } from '../sender';
import type { StepProps } from '../stepProps';
import { Toner } from '../toner/Toner';
import { HeadActions } from './HeadActions';
import { HeadHeed } from './HeadHeed';
import { LookAtHead } from './LookAtHead';
import { OtherZones } from './OtherZones';
import { mayTellAllOn, sayOnHead } from './sayOnHead';
import { type BowlOnHead, type HeadView, viewHead } from './viewHead';

export type Inside =
  | { readonly look: Zone }
  | { readonly moreTime: Zone }
  | { readonly mix: Zone }
  | { readonly toner: Zone };

/** What is on the head: the zone that wants something next is large, and the actions are for it. */
export function ColourOn(props: StepProps) {
  const [inside, setInside] = createSignal<Inside | null>(null);
  const [chosen, setChosen] = createSignal<Zone | null>(null);
  const view = createMemo(() => viewHead(props.consultation, props.settings, props.nowMs));
  const one = createMemo(() => view().on.find(({ bowl }) => bowl.zone === chosen()) ?? view().on[0]);
  const leave = () => setInside(null);
  /** What was opened for one zone stays with it, whatever calls for another meanwhile. */
  const looking = () => findOn(view(), readInside(inside(), 'look'))?.bowl.zone;
  const extending = () => findOn(view(), readInside(inside(), 'moreTime'))?.clock.id;
  const mixing = () => {
    const open = readInside(inside(), 'mix');
    const zone = view().others.find((each) => each.zone === open);
    return zone?.permit.ok === true && isFree(zone.bowlState) ? zone.zone : undefined;
  };
  const toning = () => {
    const open = readInside(inside(), 'toner');
    return view().others.find((each) => each.zone === open && each.toner !== null)?.zone;
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
      <Match when={looking()} keyed>
        {(zone) => <LookAtHead {...props} zone={zone} onClose={leave} />}
      </Match>
      <Match when={extending()} keyed>
        {(clockId) => <MoreTime {...props} clockId={clockId} onClose={leave} />}
      </Match>
    </Switch>
  );
}

/** The zone that this page was opened for; undefined where another page is open, or none. */
const readInside = (inside: Inside | null, page: 'look' | 'moreTime' | 'mix' | 'toner'): Zone | undefined =>
  inside === null ? undefined : (inside as Partial<Record<typeof page, Zone>>)[page];

const findOn = ({ on }: HeadView, zone: Zone | undefined): BowlOnHead | undefined =>
  on.find(({ bowl }) => bowl.zone === zone);

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
  const of = () => ({ words, answers: answers(), settings: props.settings, nowMs: props.nowMs });
  const sayAllOn = (zone: Zone) => sender.send({ type: 'BOWL_ALL_ON', answers: { zone } });
  const answers = () => props.consultation.record.answers;
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
            <For each={sayOnHead(one(), of())}>{(line) => <p class="clock-aside-line">{line}</p>}</For>
            <Show when={mayTellAllOn(one(), of())}>
              <BigButton act="all-on" onPress={() => void sayAllOn(one().bowl.zone)}>
                {areRootsToCome(answers(), one().bowl) ? words.colourOn.rootsOn : words.colourOn.allOn}
              </BigButton>
            </Show>
            <Show when={mayExtend(one())}>
              <BigButton act="more-time" onPress={() => props.onInside({ moreTime: one().bowl.zone })}>
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
      <HeadHeed {...props} />
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
