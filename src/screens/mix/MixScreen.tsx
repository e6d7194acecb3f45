import { createMemo, createSignal, For, Match, Show, Switch } from 'solid-js';
import type { Zone } from '../../../shared/records/zones';
import { BigButton } from '../../parts/BigButton';
import { HandCaution } from '../../parts/HandCaution';
import { Refusal } from '../../parts/Refusal';
import { StepPage } from '../../parts/StepPage';
import { useWords } from '../../parts/useWords';
import { SkinTestOpener } from '../skinTest/SkinTestOpener';
import '../layout.css';
import { createSender } from '../sender';
import type { StepProps } from '../stepProps';
import { Toner } from '../toner/Toner';
import { BowlPage } from './BowlPage';
import { sayHeld } from './sayHeld';
import { isFree, type MixView, viewMix } from './viewMix';
import { createNotCalm, WeighedActions } from './WeighedActions';
import { ZoneCard } from './ZoneCard';

/** At the scale: the bowl of the next zone that may be mixed, then the bowls that stand weighed, else what is against it. */
export function MixScreen(props: StepProps) {
  const [mixing, setMixing] = createSignal<Zone | null>(null);
  const view = createMemo(() => viewMix(props.consultation, props.settings, props.nowMs));
  const [toning, setToning] = createSignal<Zone | null>(null);
  const tonerFor = () => view().zones.find(({ zone, toner }) => zone === toning() && toner !== null)?.zone;
  const open = createMemo(() =>
    view()
      .zones.filter(({ permit, bowlState }) => permit.ok && isFree(bowlState))
      .map(({ zone }) => zone),
  );
  const [isAtBowls, setIsAtBowls] = createSignal(false);
  /** With one zone and nothing else to do, its bowl is what the screen is for. */
  const only = () => {
    const isAlone = view().zones.every(({ bowlState }) => bowlState !== 'weighed') && !view().mayFinish;
    return isAlone && open().length === 1 ? open()[0] : undefined;
  };
  /** What was decided is weighed zone by zone, until somebody goes to the bowls, or one is thrown away or used. */
  const next = () => {
    const isFresh = view().zones.every(
      ({ bowl, bowlState, isTooOld }) =>
        (bowlState === 'none' || (bowlState === 'weighed' && bowl?.kind === 'tested')) && !isTooOld,
    );
    return isFresh && !isAtBowls() ? open()[0] : undefined;
  };
  const toBowls = () => {
    setIsAtBowls(true);
    setMixing(null);
  };
  const shown = createMemo(() => {
    const asked = mixing();
    return asked !== null && open().includes(asked) ? asked : (only() ?? next());
  });
  return (
    <Switch fallback={<Scale {...props} view={view()} open={open()} onMix={setMixing} onToner={setToning} />}>
      <Match when={tonerFor()} keyed>
        {(zone) => <Toner {...props} zone={zone} onClose={() => setToning(null)} />}
      </Match>
      <Match when={shown()} keyed>
        {(zone) => (
          <BowlPage
            {...props}
            zone={zone}
            onWeighed={() => setMixing(null)}
            {...(only() === zone ? {} : { onClose: toBowls })}
          />
        )}
      </Match>
    </Switch>
  );
}

function Scale(
  props: StepProps & {
    readonly view: MixView;
    readonly open: readonly Zone[];
    readonly onMix: (zone: Zone) => void;
    readonly onToner: (zone: Zone) => void;
  },
) {
  const words = useWords();
  const sender = createSender(props);
  const weighed = createMemo(() => props.view.zones.find(({ bowlState }) => bowlState === 'weighed')?.zone);
  const find = (zone: Zone) => props.view.zones.find((each) => each.zone === zone);
  const notCalm = createNotCalm();
  const heldBy = (zone: Zone): string | null => {
    const atScale = find(zone);
    return atScale === undefined
      ? null
      : sayHeld(atScale, props.consultation.record, words, words.mix.notCalmThen);
  };
  const mayApply = (zone: Zone) => heldBy(zone) === null;
  /** Once nothing stands weighed she is asked anew how scalp and face are. */
  const leaveForClient = () => {
    if (weighed() === undefined) props.page.onBackTo('client');
  };
  /** What comes first at the scale: what was thrown away is mixed again; else the next zone, until it can be finished. */
  const first = createMemo(() => {
    if (weighed() !== undefined) return undefined;
    const thrown = props.view.zones.find(
      ({ zone, bowlState }) => bowlState === 'thrown' && props.open.includes(zone),
    );
    return thrown?.zone ?? (props.view.mayFinish ? undefined : props.open[0]);
  });
  return (
    <StepPage
      page={props.page}
      title={words.mix.title}
      actions={
        <>
          <For each={props.open.filter((zone) => zone !== first())}>
            {(zone) => <MixFor zone={zone} onMix={props.onMix} />}
          </For>
          <Show when={weighed()}>
            {(zone) => (
              <WeighedActions
                zone={zone()}
                mayApply={mayApply(zone())}
                sender={sender}
                notCalm={notCalm}
                onThrown={leaveForClient}
              />
            )}
          </Show>
          <Show when={props.view.needsStrand}>
            <BigButton act="new-strand" onPress={() => props.page.onBackTo('strandTest')}>
              {words.mix.secondRound}
            </BigButton>
          </Show>
          <Show when={props.view.mayFinish}>
            <BigButton
              kind={first() === undefined ? 'primary' : 'plain'}
              act="finish"
              onPress={() => void sender.send({ type: 'FINISHED' })}
            >
              {words.mix.finish}
            </BigButton>
          </Show>
          <Show when={first()}>{(zone) => <MixFor zone={zone()} onMix={props.onMix} isFirst />}</Show>
        </>
      }
    >
      <Show when={props.view.isSkinTestOpen}>
        <SkinTestOpener {...props} />
      </Show>
      <div class="columns">
        <For each={props.view.zones.map(({ zone }) => zone)}>
          {(zone) => (
            <Show when={find(zone)}>
              {(atScale) => (
                <ZoneCard
                  atScale={atScale()}
                  record={props.consultation.record}
                  isNext={zone === weighed() && mayApply(zone)}
                  settings={props.settings}
                  onToner={props.onToner}
                />
              )}
            </Show>
          )}
        </For>
      </div>
      <Show when={weighed()}>
        {(zone) => (
          <Show
            when={heldBy(zone()) ?? (notCalm.isSaid() ? words.mix.notCalmThen : null)}
            fallback={<HandCaution caution="standing" />}
          >
            {(why) => <p class="broke-line">{why()}</p>}
          </Show>
        )}
      </Show>
      <Refusal refusal={sender.refusal()} />
    </StepPage>
  );
}

function MixFor(props: {
  readonly zone: Zone;
  readonly onMix: (zone: Zone) => void;
  readonly isFirst?: boolean;
}) {
  const words = useWords();
  return (
    <BigButton
      kind={props.isFirst === true ? 'primary' : 'plain'}
      act={`mix-${props.zone}`}
      onPress={() => props.onMix(props.zone)}
    >
      {words.mix.weighFor(words.general.zones[props.zone])}
    </BigButton>
  );
}
