import { createMemo, createSignal, For, type JSX, Show } from 'solid-js';
import { backSteps } from '../../../shared/records/steps';
import { BigButton } from '../../parts/BigButton';
import { Refusal } from '../../parts/Refusal';
import { useWords } from '../../parts/useWords';
import { Cautions } from '../cautions/Cautions';
import { FinishHere } from '../finish/FinishHere';
import { isOpenNow } from '../isOpenNow';
import { mayTell, TellsOf } from '../reaction/TellsOf';
import { createSender } from '../sender';
import { SkinTestOpener } from '../skinTest/SkinTestOpener';
import type { StepProps } from '../stepProps';
import { mayPrintCard, PrintCard } from '../strandCard/PrintCard';
import { EndForm } from './EndForm';
import { GlassReacted, mayReactInGlass } from './GlassReacted';
import './leaving.css';
import { ParkForm } from './ParkForm';
import { isNothingDone, StartedByMistake } from './StartedByMistake';

const ways = ['back', 'park', 'end', 'tells', 'glass', 'card', 'cautions', 'mistake'] as const;
type Way = (typeof ways)[number];

/** What is open for this client from every step: a tile for each, and behind it one thing to do. */
export function MoreForClient(
  props: StepProps & {
    readonly onWho: () => void;
    readonly onDone: () => void;
    /** Absent where nothing is known of a last time. */
    readonly onLastVisit?: () => void;
  },
) {
  const words = useWords();
  const [way, setWay] = createSignal<Way | null>(null);
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

  const isMistake = () => isNothingDone(props);
  const isThere: Readonly<Record<Way, () => boolean>> = {
    back: () => backTo().length > 0,
    park: mayPark,
    end: () => true,
    tells: () => mayTell(props),
    glass: () => mayReactInGlass(props),
    card: () => mayPrintCard(props),
    cautions: () => true,
    mistake: isMistake,
  };
  const labels: Readonly<Record<Way, string>> = {
    back: words.leaving.goBackSomewhere,
    park: words.leaving.park,
    end: words.leaving.end,
    tells: words.reaction.tells.open,
    glass: words.strandTest.glass.late,
    card: words.strandCard.open,
    cautions: words.cautionList.open,
    mistake: words.leaving.byMistake,
  };
  const open = createMemo(() => ways.filter((each) => isThere[each]()));
  /** What was open and is so no more leads back to all of them. */
  const shown = () => open().find((each) => each === way()) ?? null;

  const pages: Readonly<Record<Way, () => JSX.Element>> = {
    back: () => (
      <section class="panel" data-panel="back">
        <h3>{words.leaving.goBack}</h3>
        <div class="more-ways">
          <For each={backTo()}>
            {(step) => (
              <BigButton act={`back-to-${step}`} onPress={() => props.page.onBackTo(step)}>
                {words.rail.steps[step]}
              </BigButton>
            )}
          </For>
        </div>
        <p class="soft">{words.leaving.goBackHint}</p>
      </section>
    ),
    park: () => <ParkForm {...props} onParked={() => props.onDone()} />,
    end: () => <EndForm {...props} />,
    tells: () => <TellsOf {...props} isOpenAtFirst onTold={() => props.onDone()} />,
    glass: () => <GlassReacted {...props} onTold={() => props.onDone()} />,
    card: () => <PrintCard {...props} />,
    cautions: () => <Cautions />,
    mistake: () => <StartedByMistake {...props} />,
  };

  return (
    <Show
      when={shown()}
      keyed
      fallback={
        <div class="for-client">
          <div class="more-head">
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
          <SkinTestOpener {...props} onOpen={() => props.onDone()} />
          <div class="more-ways">
            <Show when={props.onLastVisit}>
              {(look) => (
                <BigButton
                  act="last-visit"
                  isWay
                  onPress={() => {
                    look()();
                    props.onDone();
                  }}
                >
                  {words.lastVisit.open}
                </BigButton>
              )}
            </Show>
            <FinishHere {...props} sender={sender} onFinished={() => props.onDone()} />
            <For each={open()}>
              {(each) => (
                <BigButton act={`way-${each}`} isWay onPress={() => setWay(each)}>
                  {labels[each]}
                </BigButton>
              )}
            </For>
          </div>
          <Refusal refusal={sender.refusal()} />
          <Show when={!mayPark()}>
            <p class="soft">{words.leaving.notFromHere}</p>
          </Show>
        </div>
      }
    >
      {(here) => (
        <div class="for-client">
          {pages[here]()}
          <div class="more-head">
            <BigButton kind="quiet" act="all-ways" isWay onPress={() => setWay(null)}>
              {words.leaving.allWays}
            </BigButton>
          </div>
        </div>
      )}
    </Show>
  );
}
