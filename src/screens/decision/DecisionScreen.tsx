import { createMemo, createSignal, Match, Show, Switch } from 'solid-js';
import { type Decision, isMixingDecision } from '../../../shared/judgement/decisions';
import { isLifting } from '../../../shared/judgement/stops';
import type { Zone } from '../../../shared/records/zones';
import { formatQuantity } from '../../../shared/units/format';
import { BigButton } from '../../parts/BigButton';
import { Knot } from '../../parts/Knot';
import { Refusal } from '../../parts/Refusal';
import { StepPage } from '../../parts/StepPage';
import { useWords } from '../../parts/useWords';
import '../layout.css';
import { createSender, type Sender } from '../sender';
import type { StepProps } from '../stepProps';
import { Override } from '../strandTest/Override';
import { Choices } from './Choices';
import { CutFirst } from './CutFirst';
import './decision.css';
import { Found } from './Found';
import { OtherChoices } from './OtherChoices';
import { Retract } from './Retract';
import { asSigned, isGentlerThanTested, sayLimits } from './sayLimits';
import { type DecisionView, isProvenForNothing, listShortProofs, viewDecision } from './viewDecision';

/** What is done with what the strand said. Only a mixing decision unties the knot. */
export function DecisionScreen(props: StepProps) {
  const words = useWords();
  const [retracting, setRetracting] = createSignal<Zone | null>(null);
  const [overriding, setOverriding] = createSignal<Decision | null>(null);
  const [chosen, setChosen] = createSignal<Decision | null>(null);
  const view = createMemo(() => viewDecision(props.consultation, props.settings, props.nowMs));
  const [isChoosing, setIsChoosing] = createSignal(false);
  const sender = createSender(props);
  /** What was decided stays chosen when she is come back to. */
  const chosenNow = () => chosen() ?? view().decided ?? view().suggested;
  const choose = (decision: Decision) => {
    setChosen(decision);
    setIsChoosing(false);
  };

  return (
    <Switch
      fallback={
        <Choosing
          {...props}
          view={view()}
          sender={sender}
          chosen={chosenNow()}
          onChoose={choose}
          onMore={() => setIsChoosing(true)}
          onRetract={setRetracting}
          onOverride={setOverriding}
        />
      }
    >
      <Match when={retracting()} keyed>
        {(zone) => <Retract {...props} zone={zone} onClose={() => setRetracting(null)} />}
      </Match>
      <Match when={isChoosing()}>
        <OtherChoices
          {...props}
          view={view()}
          chosen={chosenNow()}
          onChoose={choose}
          onClose={() => setIsChoosing(false)}
        />
      </Match>
      <Match when={overriding()} keyed>
        {(decision) => (
          <Override
            {...props}
            rule="judgement.freerThanSuggested"
            title={words.decision.freerTitle(words.decision.decisions[decision].name)}
            onClose={() => setOverriding(null)}
          />
        )}
      </Match>
    </Switch>
  );
}

function Choosing(
  props: StepProps & {
    readonly view: DecisionView;
    readonly sender: Sender;
    readonly chosen: Decision;
    readonly onChoose: (decision: Decision) => void;
    readonly onMore: () => void;
    readonly onRetract: (zone: Zone) => void;
    readonly onOverride: (decision: Decision) => void;
  },
) {
  const words = useWords();
  const said = () => words.decision;
  const [isReconsidered, setIsReconsidered] = createSignal(false);
  const choice = () => props.view.choices.find(({ decision }) => decision === props.chosen);
  const nameOf = (decision: Decision) => said().decisions[decision].name;
  const isToLift = () => choice()?.kind === 'freer' && !props.view.isFreerLifted;
  const decide = () => {
    setIsReconsidered(false);
    void props.sender.send({ type: 'DECIDED', answers: { decision: props.chosen } });
  };
  /** What was decided leads to no bowl, and nothing else has been chosen since. */
  const settled = () => (props.view.decided === props.chosen ? props.view.decided : null);

  /** The suggestion in plain words; what it may not be is said of lightener where she wants to be lifted. */
  const headline = () => {
    const { service } = props.consultation.record.answers.client ?? {};
    const stuff = service !== undefined && isLifting(service) ? 'lift' : 'colour';
    return said().headlines[props.view.suggested][stuff];
  };
  /** How light it gets is no promise: what the strands reached is said of their own mix alone, of a gentler one less. */
  const sayLimit = () => {
    const { reached, target, found } = props.view;
    if (!isMixingDecision(props.chosen) || reached === null || target === null) return '';
    const write = (level: number) => formatQuantity(level, 'level', props.settings.units, words.locale);
    const record = asSigned(props.consultation.record, props.chosen, props.view.suggested);
    const isGentler = isGentlerThanTested(record, found, props.chosen, props.settings, props.nowMs);
    if (!isGentler && reached >= target) return '';
    return (isGentler ? said().expectLess : said().expect)(write(reached), write(target));
  };

  const limitsOf = (decision: Decision) =>
    sayLimits(
      asSigned(props.consultation.record, decision, props.view.suggested),
      props.view.found,
      decision,
      {
        words,
        settings: props.settings,
        nowMs: props.nowMs,
      },
    );
  /** What the suggestion comes to: its limits, or the place of the strand it asks for. */
  const saySuggested = () => {
    const { suggested, another } = props.view;
    return suggested === 'testAgain' && another !== null
      ? words.strandTest.preparing.another(
          words.general.zones[another.zone],
          words.hair.places[another.place],
        )
      : limitsOf(suggested);
  };

  /** Whether it unties the knot; what was proven for less than its planned time is a limit of its own. */
  const sayKnot = () => {
    const { found } = props.view;
    if (isPlanToChange()) return said().cut.noMixUntil;
    if (!isMixingDecision(props.chosen)) return said().wouldStayTied;
    if (isProvenForNothing(found, props.chosen)) return said().wouldUntieNothing;
    const proofs = listShortProofs(found, props.chosen).map(({ zone, onMin }) =>
      said().minutesOnZone(
        formatQuantity(onMin, 'minutes', props.settings.units, words.locale),
        words.general.zones[zone],
      ),
    );
    return proofs.length === 0 ? said().wouldUntie : said().wouldUntieFor(proofs);
  };

  /** What the suggestion means, and what it leaves, stands in its own tile; a no says what is open instead. */
  const sayMeans = () => {
    if (isPlanToChange()) return '';
    if (props.chosen !== props.view.suggested)
      return limitsOf(props.chosen) || said().decisions[props.chosen].means;
    return props.chosen === 'weSayNo' ? said().instead : '';
  };

  /** Cut hair, or colour that only deposits, is another plan: it is told anew, and gets its own strand. */
  const isToCut = () => settled() === 'cutFirst' && !isReconsidered();
  const isPlanToChange = () => settled() === 'cutFirst' || settled() === 'depositOnly';

  return (
    <StepPage
      page={props.page}
      title={settled() === null ? headline() : said().titleDecided(nameOf(props.chosen))}
      actions={
        <>
          <Show
            when={props.sender.refusal() === null}
            fallback={<Refusal refusal={props.sender.refusal()} />}
          >
            <p class="knot-word" data-unties={isMixingDecision(props.chosen)}>
              <Knot isUntied={false} />
              <span>
                <strong>{sayKnot()}</strong> {sayMeans()} {sayLimit()}
              </span>
            </p>
          </Show>
          <Show when={isToCut()}>
            <BigButton act="park-to-cut" onPress={() => props.page.onMore()}>
              {said().park}
            </BigButton>
          </Show>
          <Show when={!isPlanToChange()}>
            <BigButton act="change-plan" onPress={() => void props.sender.send({ type: 'PLAN_CHANGED' })}>
              {said().changePlan}
            </BigButton>
          </Show>
          <Switch
            fallback={
              <BigButton
                kind="primary"
                act={`decide-${props.chosen}`}
                isDisabled={choice()?.isOpen !== true}
                onPress={decide}
              >
                {said().decide(nameOf(props.chosen))}
              </BigButton>
            }
          >
            <Match when={isToLift()}>
              <BigButton
                kind="primary"
                act="override-freer"
                isDisabled={choice()?.isOpen !== true}
                onPress={() => props.onOverride(props.chosen)}
              >
                {said().freerLift}
              </BigButton>
            </Match>
            <Match when={isPlanToChange()}>
              <BigButton
                kind="primary"
                act="change-plan"
                onPress={() => void props.sender.send({ type: 'PLAN_CHANGED' })}
              >
                {settled() === 'cutFirst' ? said().cut.isCut : said().toDeposit}
              </BigButton>
            </Match>
            <Match when={settled() === 'weSayNo' || settled() === 'severalVisits'}>
              <BigButton kind="primary" act="go-on" onPress={() => props.page.onMore()}>
                {settled() === 'weSayNo' ? said().closeNo : said().park}
              </BigButton>
            </Match>
          </Switch>
        </>
      }
    >
      <div class="columns decision-columns">
        <Found {...props} view={props.view} onRetract={props.onRetract} />
        <div class="column">
          <Show
            when={isToCut()}
            fallback={
              <Choices
                view={props.view}
                limits={saySuggested()}
                chosen={props.chosen}
                onChoose={props.onChoose}
                onMore={props.onMore}
              />
            }
          >
            <CutFirst {...props} onOtherwise={() => setIsReconsidered(true)} />
          </Show>
        </div>
      </div>
    </StepPage>
  );
}
