import { For, Show } from 'solid-js';
import { careForm } from '../../../shared/records/forms/course';
import { BigButton } from '../../parts/BigButton';
import { Caution } from '../../parts/Caution';
import { HoldButton } from '../../parts/HoldButton';
import { Refusal } from '../../parts/Refusal';
import { StepPage } from '../../parts/StepPage';
import { useWords } from '../../parts/useWords';
import type { EventForm } from '../eventForm';
import type { StepProps } from '../stepProps';
import { Tile, Tiles } from '../Tiles';
import { OnHerLine } from './OnHerLine';
import { type ReactionView, sayOnFor } from './viewReaction';

/** Signs after which less than this is too little: labels; burn first-aid guidance; Pang & Fiume 2001. */
const askEmergency: readonly string[] = ['breath', 'faint'];
const askDoctor: readonly string[] = ['blisters', 'eyes'];

/** What was done; closing ends no water clock unsaid, and nothing closes while anything is on. */
export function CarePage(
  props: StepProps & {
    readonly view: ReactionView;
    readonly form: EventForm;
    readonly onClose: () => void;
  },
) {
  const words = useWords();
  const said = () => words.reaction;
  const chosen = () => props.form.draft.raw().care;
  const isOn = () => props.view.contacts.length > 0;
  /** What was told asks for more than was done; it is said, and closes all the same. */
  const tooLittle = (): 'emergency' | 'doctor' | null => {
    const told = (of: readonly string[]) =>
      props.consultation.record.reaction?.signs.some((sign) => of.includes(sign)) === true;
    if (chosen() !== undefined && chosen() !== 'emergencyCalled' && told(askEmergency)) return 'emergency';
    return chosen() === 'rinsed' && told(askDoctor) ? 'doctor' : null;
  };
  const short = () => props.view.waters.find(({ isLongEnough }) => !isLongEnough);
  return (
    <StepPage
      page={{ ...props.page, isOnSkin: false, breaking: [] }}
      title={said().care.ask}
      actions={
        <>
          <Refusal refusal={props.form.refusal()} />
          <BigButton act="cancel" isWay onPress={props.onClose}>
            {said().toRinse}
          </BigButton>
          <HoldButton
            label={short() === undefined ? said().giveCare : said().giveCareAnyway}
            act="give-care"
            isDisabled={isOn() || chosen() === undefined}
            onHeld={() => void props.form.send('CARE_GIVEN')}
          />
        </>
      }
    >
      <OnHerLine view={props.view} />
      <Tiles question="care" label={said().care.ask} size="wide">
        <For each={careForm.care.options}>
          {(option) => (
            <Tile
              option={option}
              isPressed={chosen() === option}
              onPress={() => props.form.draft.set('care', option)}
            >
              {said().care.options[option]}
            </Tile>
          )}
        </For>
      </Tiles>
      <Show when={isOn()}>
        <Caution kind="stop">
          <p>{said().rinseFirst}</p>
        </Caution>
      </Show>
      <Show when={tooLittle()}>
        {(missing) => (
          <Caution kind="stop">
            <p data-line="too-little">{said().tooLittle[missing()]}</p>
          </Caution>
        )}
      </Show>
      <Show when={short()}>
        {(water) => (
          <Caution>
            <p data-line="water-short">
              {said().waterShort(words.general.zones[water().zone], sayOnFor(water().runsForMs))}
            </p>
          </Caution>
        )}
      </Show>
      <p class="lead">{said().recorded}</p>
    </StepPage>
  );
}
