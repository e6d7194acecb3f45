import { createMemo, For, Match, Show, Switch } from 'solid-js';
import type { Form } from '../../../shared/records/form';
import { careForm, reactionForm } from '../../../shared/records/forms/course';
import type { Zone } from '../../../shared/records/zones';
import { formatCountdown } from '../../../shared/units/format';
import { msPerSecond } from '../../../shared/units/time';
import { BigButton } from '../../parts/BigButton';
import { HoldButton } from '../../parts/HoldButton';
import { Refusal } from '../../parts/Refusal';
import { StepPage } from '../../parts/StepPage';
import { useWords } from '../../parts/useWords';
import { createEventForm } from '../eventForm';
import '../layout.css';
import { PartForm } from '../PartForm';
import { createSender } from '../sender';
import type { StepProps } from '../stepProps';
import './reaction.css';
import { viewReaction } from './viewReaction';

/** Whole seconds that have passed: how long it has been on, never how long it will. */
const sayOnFor = (onForMs: number): string =>
  formatCountdown(Math.floor(onForMs / msPerSecond) * msPerSecond);

const signsForm: Form = reactionForm;

/** She burns, swells or cannot breathe: what to do now, in order; what is on goes on counting until it is rinsed. */
export function Reaction(props: StepProps) {
  const words = useWords();
  const said = () => words.reaction;
  const view = createMemo(() => viewReaction(props.consultation, props.nowMs));
  const sender = createSender(props);
  const signs = createEventForm(props, signsForm, `${props.consultation.id}/signs`, {});
  const care = createEventForm(props, careForm, `${props.consultation.id}/care`, {});
  /** Nobody is kept from recording by a question: nothing tapped is "not clear yet". */
  const record = async () => {
    const { signs: seen } = signs.draft.raw();
    if (!Array.isArray(seen) || seen.length === 0) signs.draft.set('signs', ['unclear']);
    sender.say(null);
    await props.rinseSteps.write();
    await signs.send('REACTION_RECORDED');
  };
  const rinse = async (zone: Zone) => {
    await props.rinseSteps.write();
    await sender.send({ type: 'BOWL_RINSED', answers: { zone } });
  };
  const sayNone = () => {
    if (view().care === 'unwritten') props.rinseSteps.close();
    else void sender.send({ type: 'NO_REACTION' });
  };
  const contacts = createMemo(() => view().contacts.map(({ zone }) => zone));
  const findContact = (zone: Zone) => view().contacts.find((contact) => contact.zone === zone);
  const refusal = () => sender.refusal() ?? signs.refusal() ?? care.refusal() ?? props.rinseSteps.refusal();
  const isSeen = () => view().care === 'seen';

  return (
    <StepPage
      page={{ ...props.page, isOnSkin: false }}
      title={said().title}
      actions={
        <>
          {/* Beside the actions: what could not be written never pushes the rinse steps down. */}
          <Refusal refusal={refusal()} />
          <Show
            when={isSeen()}
            fallback={
              <>
                <BigButton act="no-reaction" isWay={view().care === 'unwritten'} onPress={sayNone}>
                  {said().notAReaction}
                </BigButton>
                <HoldButton label={said().record} act="record-reaction" onHeld={() => void record()} />
              </>
            }
          >
            <BigButton
              kind="primary"
              act="give-care"
              isDisabled={contacts().length > 0}
              onPress={() => void care.send('CARE_GIVEN')}
            >
              {said().giveCare}
            </BigButton>
          </Show>
        </>
      }
    >
      <p class="emergency">{said().emergency}</p>
      <Show when={view().toldForMs !== null}>
        <p class="since-told">
          {said().rinseGoal} {said().told}{' '}
          <span class="since-told-digits">{sayOnFor(view().toldForMs ?? 0)}</span>
        </p>
      </Show>
      <div class="columns">
        <div class="column">
          <div class="contacts" aria-live="polite">
            <For each={contacts()}>
              {(zone) => (
                <div class="contact" data-zone={zone}>
                  <p class="contact-time">
                    {said().onFor(words.general.zones[zone])}{' '}
                    <span class="contact-digits">{sayOnFor(findContact(zone)?.onForMs ?? 0)}</span>
                  </p>
                  <BigButton act={`rinsed-${zone}`} onPress={() => void rinse(zone)}>
                    {said().rinsed(words.general.zones[zone])}
                  </BigButton>
                </div>
              )}
            </For>
            <Show when={contacts().length === 0}>
              <p>{said().nothingOn}</p>
            </Show>
          </div>
          <ol class="care-steps">
            <For each={said().steps}>{(step) => <li>{step}</li>}</For>
          </ol>
        </div>
        <Switch>
          <Match when={isSeen()}>
            <div class="column">
              <p>{contacts().length > 0 ? said().rinseFirst : said().recorded}</p>
              <PartForm step={props} form={care} questions={careForm} words={{ care: said().care }} />
            </div>
          </Match>
          <Match when={!isSeen()}>
            <PartForm step={props} form={signs} questions={signsForm} words={{ signs: said().signs }} />
          </Match>
        </Switch>
      </div>
    </StepPage>
  );
}
