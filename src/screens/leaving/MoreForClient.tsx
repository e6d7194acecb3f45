import { createMemo, createSignal, For, Show } from 'solid-js';
import { type BackStep, backSteps } from '../../../shared/records/steps';
import { BigButton } from '../../parts/BigButton';
import { Refusal } from '../../parts/Refusal';
import { useWords } from '../../parts/useWords';
import { SkinTest } from '../ask/SkinTest';
import type { TapRefusal } from '../explainRefusal';
import { isOpenNow } from '../isOpenNow';
import { screenOf } from '../screenOf';
import type { StepProps } from '../stepProps';
import { Correction } from '../stopped/Correction';
import { EndForm } from './EndForm';
import { ParkForm } from './ParkForm';

/** What is open for this client from every step: the skin test, going back, parking, ending, who is at the station. */
export function MoreForClient(
  props: StepProps & { readonly onWho: () => void; readonly onDone: () => void },
) {
  const words = useWords();
  const [refusal, setRefusal] = createSignal<TapRefusal | null>(null);
  const wouldTake = (
    type: 'PARKED' | 'REOPENED' | 'CORRECTED',
    answers: Readonly<Record<string, string | number>>,
  ) => isOpenNow(props.consultation, { type, answers }, props.settings, props.nowMs);
  const backTo = createMemo(() => backSteps.filter((step) => wouldTake('REOPENED', { step })));
  /** Where she is stopped, the screen itself corrects; elsewhere only a skin test that was noted wrongly. */
  const mayCorrectSkinTest = () =>
    screenOf(props.consultation.state) !== 'stopped' &&
    wouldTake('CORRECTED', { answer: 'skinTest', code: 'wrongTap', words: '-' });
  const mayPark = () => wouldTake('PARKED', { untilAtMs: props.nowMs + 1 });

  const mayReact = () => props.consultation.state.context.facts.care === 'calm';
  const reactionFromMenu = () => {
    props.page.onReaction();
    props.onDone();
  };

  async function goBack(step: BackStep): Promise<void> {
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
          <BigButton kind="danger" act="reaction-from-menu" onPress={reactionFromMenu}>
            {words.general.reaction}
          </BigButton>
        </Show>
      </div>
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
      <SkinTest {...props} />
      <Show when={mayCorrectSkinTest()}>
        <Correction {...props} answers={['skinTest']} title={words.leaving.correctSkinTest} />
      </Show>
      <Show when={mayPark()} fallback={<p class="soft">{words.leaving.notFromHere}</p>}>
        <ParkForm {...props} onParked={() => props.onDone()} />
      </Show>
      <EndForm {...props} />
    </>
  );
}
