import { For, Show } from 'solid-js';
import { isCallOwed } from '../../../shared/records/callOwed';
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

/**
 * Signs after which a doctor has to look. Blisters: burn first-aid guidance. Eyes: labels; Nielsen et al., J. Occup. Health
 * 2016. Hives and swelling, from which shock may follow: published: Pang & Fiume, Int. J. Toxicol. 20(S3):7–21, 2001, and
 * clinical reports. Checked in tests/src/screens/colourOn/bowlScreens.test.tsx.
 */
const askDoctor: readonly string[] = ['blisters', 'swelling', 'hives', 'eyes'];

/**
 * What was done; closing ends no water clock unsaid, and nothing closes while anything is on, nor on throat, breath or faint
 * before the call.
 */
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
  const isTold = (of: readonly string[]) =>
    props.consultation.record.reaction?.signs.some((sign) => of.includes(sign)) === true;
  /** What was told asks for more than was done: said before anything is chosen. */
  const tooLittle = (): 'emergency' | 'doctor' | null => {
    if (isCallOwed(props.consultation.record, String(chosen()))) return 'emergency';
    return isTold(askDoctor) && (chosen() === undefined || chosen() === 'rinsed') ? 'doctor' : null;
  };
  const Close = (close: { readonly label: string }) => (
    <HoldButton
      label={close.label}
      act="give-care"
      kind={short() === undefined ? 'danger' : 'plain'}
      isDisabled={isOn() || chosen() === undefined || tooLittle() === 'emergency'}
      onHeld={() => void props.form.send('CARE_GIVEN')}
    />
  );
  const short = () => props.view.waters.find(({ isLongEnough }) => !isLongEnough);
  return (
    <StepPage
      page={{ ...props.page, isOnSkin: false, breaking: [] }}
      title={said().care.ask}
      actions={
        <>
          <Refusal refusal={props.form.refusal()} />
          <Show
            when={short() === undefined}
            fallback={
              <>
                <Close label={said().giveCareAnyway} />
                <BigButton kind="primary" act="cancel" isWay onPress={props.onClose}>
                  {said().toRinse}
                </BigButton>
              </>
            }
          >
            <BigButton act="cancel" isWay onPress={props.onClose}>
              {said().toRinse}
            </BigButton>
            <Close label={said().giveCare} />
          </Show>
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
