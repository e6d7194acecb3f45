import { createMemo, createSignal, For, Show } from 'solid-js';
import { type BackStep, backSteps } from '../../../shared/records/steps';
import { BigButton } from '../../parts/BigButton';
import { Refusal } from '../../parts/Refusal';
import { useWords } from '../../parts/useWords';
import type { TapRefusal } from '../explainRefusal';
import { FinishHere } from '../finish/FinishHere';
import { isOpenNow } from '../isOpenNow';
import { TellsOf } from '../reaction/TellsOf';
import { createSender } from '../sender';
import { SkinTestOpener } from '../skinTest/SkinTestOpener';
import type { StepProps } from '../stepProps';
import { EndForm } from './EndForm';
import { ParkForm } from './ParkForm';
import { isNothingDone, StartedByMistake } from './StartedByMistake';

/** What is open for this client from every step: the skin test, going back, parking, ending, who is at the station. */
export function MoreForClient(
  props: StepProps & { readonly onWho: () => void; readonly onDone: () => void },
) {
  const words = useWords();
  const [refusal, setRefusal] = createSignal<TapRefusal | null>(null);
  const sender = createSender(props);
  const wouldTake = (type: 'PARKED' | 'REOPENED', answers: Readonly<Record<string, string | number>>) =>
    isOpenNow(props.consultation, { type, answers }, props.settings, props.nowMs);
  const backTo = createMemo(() => backSteps.filter((step) => wouldTake('REOPENED', { step })));
  const mayPark = () => wouldTake('PARKED', { untilAtMs: props.nowMs + 1 });

  const mayReact = () => props.consultation.state.context.facts.care === 'calm';
  const reactionFromMenu = () => {
    props.page.onReaction();
    props.onDone();
  };

  async function goBack(step: BackStep): Promise<void> {
    if (props.page.onBackTo !== undefined) return props.page.onBackTo(step);
    const taken = await props.submit({ type: 'REOPENED', answers: { step } });
    setRefusal(taken.ok ? null : taken.error);
    if (taken.ok) props.onDone();
  }

  return (
    <>
      <div class="options">
        <p class="who-now">{words.leaving.whoNow(props.by === '' ? words.bar.nobodyChosen : props.by)}</p>
        <BigButton kind="quiet" act="change-who" onPress={() => props.onWho()}>
          {words.leaving.changeWho}
        </BigButton>
        <Show when={mayReact()}>
          <BigButton kind="danger" act="reaction-from-menu" isWay onPress={reactionFromMenu}>
            {words.general.reaction}
          </BigButton>
        </Show>
      </div>
      <FinishHere {...props} sender={sender} onFinished={() => props.onDone()} />
      <Refusal refusal={sender.refusal()} />
      <Show when={isNothingDone(props)}>
        <StartedByMistake {...props} />
      </Show>
      <Show when={backTo().length > 0}>
        <section class="panel" data-panel="back">
          <h3>{words.leaving.goBack}</h3>
          <div class="options">
            <For each={backTo()}>
              {(step) => (
                <BigButton act={`back-to-${step}`} onPress={() => void goBack(step)}>
                  {words.rail.steps[step]}
                </BigButton>
              )}
            </For>
          </div>
          <p class="soft">{words.leaving.goBackHint}</p>
          <Refusal refusal={refusal()} />
        </section>
      </Show>
      <TellsOf {...props} onTold={() => props.onDone()} />
      <SkinTestOpener {...props} onOpen={() => props.onDone()} />
      <Show when={mayPark()} fallback={<p class="soft">{words.leaving.notFromHere}</p>}>
        <ParkForm {...props} onParked={() => props.onDone()} />
      </Show>
      <EndForm {...props} />
    </>
  );
}
