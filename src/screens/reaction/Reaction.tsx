import { createMemo, createSignal, For, Match, Show, Switch } from 'solid-js';
import { careForm, reactionForm } from '../../../shared/records/forms/course';
import type { Zone } from '../../../shared/records/zones';
import { BigButton } from '../../parts/BigButton';
import { Refusal } from '../../parts/Refusal';
import { StepPage } from '../../parts/StepPage';
import { useWords } from '../../parts/useWords';
import { createEventForm, type EventForm } from '../eventForm';
import '../layout.css';
import { createSender, type Sender } from '../sender';
import type { StepProps } from '../stepProps';
import './reaction.css';
import { CarePage } from './CarePage';
import { Emergency } from './Emergency';
import { NonePage } from './NonePage';
import { ReactionActions } from './ReactionActions';
import { SignsPage } from './SignsPage';
import { type ReactionView, sayOnFor, viewReaction } from './viewReaction';

export type Inside = 'signs' | 'care' | 'none';

/** She burns, swells or cannot breathe: what to do now, in order; what is on goes on counting until it is rinsed. */
export function Reaction(props: StepProps) {
  const [inside, setInside] = createSignal<Inside | null>(null);
  const view = createMemo(() => viewReaction(props.consultation, props.nowMs));
  const sender = createSender(props);
  const signs = createEventForm(props, reactionForm, `${props.consultation.id}/signs`, {});
  const care = createEventForm(props, careForm, `${props.consultation.id}/care`, {});
  /** Nobody is kept from recording by a question: nothing tapped is "not clear yet". */
  const record = async () => {
    const { signs: seen } = signs.draft.raw();
    if (!Array.isArray(seen) || seen.length === 0) signs.draft.set('signs', ['unclear']);
    sender.say(null);
    await props.rinseSteps.write();
    if (await signs.send('REACTION_RECORDED')) setInside(null);
  };
  return (
    <Switch
      fallback={
        <DoNow
          {...props}
          view={view()}
          sender={sender}
          signs={signs}
          care={care}
          onRecord={() => void record()}
          onInside={setInside}
        />
      }
    >
      <Match when={inside() === 'signs'}>
        <SignsPage
          {...props}
          view={view()}
          form={signs}
          onRecord={() => void record()}
          onClose={() => setInside(null)}
        />
      </Match>
      <Match when={inside() === 'none' && view().care === 'suspected'}>
        <NonePage {...props} view={view()} sender={sender} onClose={() => setInside(null)} />
      </Match>
      <Match when={inside() === 'care' && view().care === 'seen'}>
        <CarePage {...props} view={view()} form={care} onClose={() => setInside(null)} />
      </Match>
    </Switch>
  );
}

function DoNow(
  props: StepProps & {
    readonly view: ReactionView;
    readonly sender: Sender;
    readonly signs: EventForm;
    readonly care: EventForm;
    readonly onRecord: () => void;
    readonly onInside: (inside: Inside) => void;
  },
) {
  const words = useWords();
  const said = () => words.reaction;
  const rinse = async (zone: Zone) => {
    await props.rinseSteps.write();
    await props.sender.send({ type: 'BOWL_RINSED', answers: { zone } });
  };
  const rinseAll = async () => {
    for (const zone of contacts()) await rinse(zone);
  };
  const contacts = createMemo(() => props.view.contacts.map(({ zone }) => zone));
  const waters = createMemo(() => props.view.waters.map(({ zone }) => zone));
  const findContact = (zone: Zone) => props.view.contacts.find((contact) => contact.zone === zone);
  const findWater = (zone: Zone) => props.view.waters.find((water) => water.zone === zone);
  const refusal = () =>
    props.sender.refusal() ?? props.signs.refusal() ?? props.care.refusal() ?? props.rinseSteps.refusal();

  return (
    <StepPage
      page={{ ...props.page, isOnSkin: false, breaking: [] }}
      title={props.view.care === 'seen' ? said().titleRecorded : said().title}
      actions={
        <>
          {/* Beside the actions: what could not be written never pushes the rinse steps down. */}
          <Refusal refusal={refusal()} />
          <ReactionActions
            {...props}
            hasCare={props.care.draft.raw().care !== undefined}
            onRinseAll={() => void rinseAll()}
          />
        </>
      }
    >
      <Emergency signs={props.view.signs} />
      <div class="columns reaction-columns">
        <div class="contacts" aria-live="polite">
          <For each={contacts()}>
            {(zone) => (
              <div class="contact" data-zone={zone}>
                <p class="contact-time">
                  {said().onFor(words.general.zones[zone])}{' '}
                  <span class="contact-digits">{sayOnFor(findContact(zone)?.onForMs ?? 0)}</span>
                </p>
                <Show when={contacts().length > 1}>
                  <BigButton act={`rinsed-${zone}`} onPress={() => void rinse(zone)}>
                    {said().rinsed(words.general.zones[zone])}
                  </BigButton>
                </Show>
              </div>
            )}
          </For>
          <For each={waters()}>
            {(zone) => (
              <div class="contact" data-water={zone} data-long-enough={findWater(zone)?.isLongEnough}>
                <p class="contact-time">
                  {findWater(zone)?.isLongEnough === true
                    ? said().waterEnough(words.general.zones[zone])
                    : said().waterRuns(words.general.zones[zone])}{' '}
                  <span class="contact-digits">{sayOnFor(findWater(zone)?.runsForMs ?? 0)}</span>
                </p>
                <p class="contact-goal">{said().waterGoal}</p>
              </div>
            )}
          </For>
          <Show when={contacts().length + waters().length === 0}>
            <p class="lead">{said().nothingOn}</p>
          </Show>
        </div>
        <div class="column">
          <Show when={props.view.toldForMs !== null}>
            <p class="since-told">
              {said().rinseGoal} {said().told}{' '}
              <span class="since-told-digits">{sayOnFor(props.view.toldForMs ?? 0)}</span>
            </p>
          </Show>
          <ol class="care-steps">
            <For each={said().steps}>{(step) => <li>{step}</li>}</For>
          </ol>
        </div>
      </div>
    </StepPage>
  );
}
