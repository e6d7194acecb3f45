import { createMemo, createSignal, For, Match, Show, Switch } from 'solid-js';
import type { Zone } from '../../../shared/records/zones';
import { BigButton } from '../../parts/BigButton';
import { Caution } from '../../parts/Caution';
import { Refusal } from '../../parts/Refusal';
import { StepPage } from '../../parts/StepPage';
import { useWords } from '../../parts/useWords';
import { TellsOf } from '../reaction/TellsOf';
import { createSender } from '../sender';
import type { StepProps } from '../stepProps';
import { OneOutcome } from '../strandTest/OneOutcome';
import { TakeOff } from '../strandTest/TakeOff';
import { viewProcessing } from '../strandTest/viewProcessing';
import { CorrectionPage } from './CorrectionPage';
import { EndPage } from './EndPage';
import { StoppedActions } from './StoppedActions';
import { StrandsLeft } from './StrandsLeft';
import { listCorrectable, listStandingStops } from './viewStopped';

type Inside =
  | { readonly kind: 'takeOff' | 'outcome'; readonly zone: Zone }
  | { readonly kind: 'correction' | 'end' };

/** She is stopped: which rule, why, what clears it. A strand that still runs comes off first. */
export function Stopped(props: StepProps) {
  const [inside, setInside] = createSignal<Inside | null>(null);
  const view = createMemo(() => viewProcessing(props.consultation, props.nowMs));
  const zoneInside = (kind: 'takeOff' | 'outcome') => {
    const open = inside();
    return open?.kind === kind ? open.zone : undefined;
  };
  const correctable = createMemo(() =>
    listCorrectable(listStandingStops(props.consultation.record, props.settings)),
  );
  const takingOff = createMemo(() => view().running.find(({ zone }) => zone === zoneInside('takeOff'))?.zone);
  const recorded = createMemo(
    () => view().off.find(({ zone }) => zone === zoneInside('outcome')),
    undefined,
    { equals: (one, other) => one?.number === other?.number },
  );
  const leave = () => setInside(null);
  return (
    <Switch fallback={<Overview {...props} view={view()} onInside={setInside} />}>
      <Match when={takingOff()} keyed>
        {(zone) => <TakeOff {...props} zone={zone} onClose={leave} />}
      </Match>
      <Match when={inside()?.kind === 'correction' && correctable().length > 0}>
        <CorrectionPage {...props} answers={correctable()} onClose={leave} />
      </Match>
      <Match when={inside()?.kind === 'end'}>
        <EndPage {...props} onClose={leave} />
      </Match>
      <Match when={recorded()} keyed>
        {(strand) => <OneOutcome {...props} strand={strand} others={view().off.length - 1} onClose={leave} />}
      </Match>
    </Switch>
  );
}

function Overview(
  props: StepProps & {
    readonly view: ReturnType<typeof viewProcessing>;
    readonly onInside: (inside: Inside) => void;
  },
) {
  const words = useWords();
  const sender = createSender(props);
  const stops = createMemo(() => listStandingStops(props.consultation.record, props.settings));
  /** Beside strands that still run, or many stops, the reasons are shorter. */
  const room = () => {
    if (props.view.running.length + props.view.off.length > 0 || stops().length > 4) return 'tight';
    return stops().length <= 2 ? 'wide' : 'middle';
  };
  /** In one tap once its time is up; before that it is asked why. */
  const takeOff = (zone: Zone) => {
    const strand = props.view.running.find((each) => each.zone === zone);
    if (strand?.reading.phase !== 'over') props.onInside({ kind: 'takeOff', zone });
    else void sender.send({ type: 'STRAND_TAKEN_OFF', answers: { zone, why: 'timeIsUp' } });
  };
  return (
    <StepPage
      page={props.page}
      title={words.leaving.stoppedTitle}
      also={words.leaving.stoppedLead}
      actions={
        <>
          <Refusal refusal={sender.refusal()} />
          {/* What is in the mix comes off before anything else is done. */}
          <Show when={props.view.running.length === 0}>
            <BigButton act="end" isWay onPress={() => props.onInside({ kind: 'end' })}>
              {words.leaving.end}
            </BigButton>
            <Show when={stops().length > 0}>
              <BigButton act="correction" isWay onPress={() => props.onInside({ kind: 'correction' })}>
                {words.leaving.correct}
              </BigButton>
            </Show>
          </Show>
          <StoppedActions
            {...props}
            sender={sender}
            onTakeOff={takeOff}
            onOutcome={(zone) => props.onInside({ kind: 'outcome', zone })}
          />
        </>
      }
    >
      <StrandsLeft {...props} onTakeOff={takeOff} />
      <Caution kind="stop">
        <For each={stops()}>
          {({ rule }) => (
            <div class="stop-said" data-room={room()} data-rule={rule}>
              <h2>{words.rules[rule].what}</h2>
              <Show when={room() !== 'tight'}>
                <p>
                  <Show when={room() === 'wide'}>{words.rules[rule].why} </Show>
                  <strong>{words.leaving.clears}</strong> {words.rules[rule].clears}
                </p>
              </Show>
            </div>
          )}
        </For>
      </Caution>
      <Show when={props.view.running.length === 0}>
        <TellsOf {...props} />
      </Show>
    </StepPage>
  );
}
