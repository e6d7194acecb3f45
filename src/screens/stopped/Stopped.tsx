import { createMemo, createSignal, For, Match, Switch } from 'solid-js';
import type { Zone } from '../../../shared/records/zones';
import { Caution } from '../../parts/Caution';
import { Refusal } from '../../parts/Refusal';
import { StepPage } from '../../parts/StepPage';
import { useWords } from '../../parts/useWords';
import { EndForm } from '../leaving/EndForm';
import { createSender } from '../sender';
import type { StepProps } from '../stepProps';
import { OneOutcome } from '../strandTest/OneOutcome';
import { TakeOff } from '../strandTest/TakeOff';
import { viewProcessing } from '../strandTest/viewProcessing';
import { Correction } from './Correction';
import { StoppedActions } from './StoppedActions';
import { StrandsLeft } from './StrandsLeft';
import { listCorrectable, listStandingStops } from './viewStopped';

type Inside = { readonly kind: 'takeOff' | 'outcome'; readonly zone: Zone };

/** She is stopped: which rule, why, what clears it. A strand that still runs comes off first. */
export function Stopped(props: StepProps) {
  const [inside, setInside] = createSignal<Inside | null>(null);
  const view = createMemo(() => viewProcessing(props.consultation, props.nowMs));
  const zoneInside = (kind: Inside['kind']) => (inside()?.kind === kind ? inside()?.zone : undefined);
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
      actions={
        <>
          <Refusal refusal={sender.refusal()} />
          <StoppedActions
            {...props}
            sender={sender}
            onTakeOff={takeOff}
            onOutcome={(zone) => props.onInside({ kind: 'outcome', zone })}
          />
        </>
      }
    >
      <p class="panel-figure">{words.leaving.stoppedLead}</p>
      <StrandsLeft {...props} sender={sender} onTakeOff={takeOff} />
      <For each={stops()}>
        {({ rule }) => (
          <div data-rule={rule}>
            <Caution kind="stop">
              <h2>{words.rules[rule].what}</h2>
              <p>{words.rules[rule].why}</p>
              <p>
                <strong>{words.leaving.clears}</strong> {words.rules[rule].clears}
              </p>
            </Caution>
          </div>
        )}
      </For>
      <EndForm {...props} />
      <Correction {...props} answers={listCorrectable(stops())} />
    </StepPage>
  );
}
