import { For } from 'solid-js';
import { reactionForm } from '../../../shared/records/forms/course';
import { BigButton } from '../../parts/BigButton';
import { HoldButton } from '../../parts/HoldButton';
import { Refusal } from '../../parts/Refusal';
import { StepPage } from '../../parts/StepPage';
import { useWords } from '../../parts/useWords';
import type { EventForm } from '../eventForm';
import type { StepProps } from '../stepProps';
import { Tile, Tiles } from '../Tiles';
import { Emergency } from './Emergency';
import { OnHerLine } from './OnHerLine';
import type { ReactionView } from './viewReaction';

const { none, options } = reactionForm.signs;

/** What is felt or seen, tile by tile; held it is recorded, and later it is added. What is on goes on counting above. */
export function SignsPage(
  props: StepProps & {
    readonly view: ReactionView;
    readonly form: EventForm;
    readonly onRecord: () => void;
    readonly onClose: () => void;
  },
) {
  const words = useWords();
  const said = () => words.reaction;
  const isSeen = () => props.view.care === 'seen';
  const chosen = (): readonly string[] => {
    const { signs } = props.form.draft.raw();
    return Array.isArray(signs) ? (signs as readonly string[]) : [];
  };
  const isRecorded = (option: string) => props.view.signs.includes(option) && option !== none;
  const toggle = (option: string) => {
    const others = chosen().filter((each) => each !== option && each !== none);
    if (option === none) return props.form.draft.set('signs', chosen().includes(none) ? [] : [none]);
    props.form.draft.set('signs', chosen().includes(option) ? others : [...others, option]);
  };
  return (
    <StepPage
      page={{ ...props.page, isOnSkin: false, breaking: [] }}
      title={said().signs.ask}
      actions={
        <>
          <Refusal refusal={props.form.refusal()} />
          <BigButton act="cancel" isWay onPress={props.onClose}>
            {said().toRinse}
          </BigButton>
          <HoldButton
            label={isSeen() ? said().addSigns : said().record}
            act="record-reaction"
            isDisabled={isSeen() && chosen().length === 0}
            onHeld={props.onRecord}
          />
        </>
      }
    >
      <Emergency signs={[...props.view.signs, ...chosen()]} />
      <OnHerLine view={props.view} />
      <Tiles question="signs" label={said().signs.ask} size="wide">
        <For each={options}>
          {(option) => (
            <Tile
              option={option}
              isPressed={chosen().includes(option) || isRecorded(option)}
              isDisabled={isRecorded(option)}
              onPress={() => toggle(option)}
            >
              {said().signs.options[option]}
            </Tile>
          )}
        </For>
      </Tiles>
    </StepPage>
  );
}
