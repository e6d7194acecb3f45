import { createMemo, For, Show } from 'solid-js';
import type { ChoiceQuestion, ChoicesQuestion } from '../../../../shared/records/form';
import type { Raw } from '../../../../shared/records/readForm';
import { useWords } from '../../useWords';
import type { ControlProps } from './control';
import { readChosen } from './sayAnswer';
import { Tile, WayTile } from './Tile';
import { Tiles } from './Tiles';

/** What may be tapped, and what has to be held because it stops everything. */
const part = ({ options, absolute = [] }: { options: readonly string[]; absolute?: readonly string[] }) => ({
  harmless: options.filter((option) => !absolute.includes(option)),
  absolute: options.filter((option) => absolute.includes(option)),
});

/** One of a few: a tap answers and goes on. */
export function ChoiceTiles(props: ControlProps<ChoiceQuestion>) {
  const options = createMemo(() => part(props.question));
  const chosen = () => props.value ?? props.question.or;
  const choose = (option: string) => {
    props.onChange(option);
    props.onDone();
  };
  const tile = (option: string, isAbsolute: boolean) => (
    <Tile
      option={option}
      label={props.words.options?.[option] ?? option}
      isChosen={chosen() === option}
      isAbsolute={isAbsolute}
      isDisabled={props.waiting?.[props.name]?.includes(option) === true}
      onChoose={() => choose(option)}
    />
  );
  return (
    <>
      <Tiles count={options().harmless.length}>
        <For each={options().harmless}>{(option) => tile(option, false)}</For>
      </Tiles>
      <Show when={options().absolute.length > 0}>
        <Tiles count={options().absolute.length} isStops>
          <For each={options().absolute}>{(option) => tile(option, true)}</For>
        </Tiles>
      </Show>
    </>
  );
}

/** What stands when one more is tapped: `none` excludes every other; an empty list is no answer yet. */
function toggle(question: ChoicesQuestion, before: readonly string[], option: string): Raw {
  if (option === question.none) return [option];
  const others = before.filter((each) => each !== option && each !== question.none);
  const after = before.includes(option) ? others : [...others, option];
  return after.length === 0 ? undefined : after;
}

/** Any number of them: each tap sets or takes back, "none" answers alone and goes on, else "That is all" does. */
export function ChoicesTiles(props: ControlProps<ChoicesQuestion>) {
  const words = useWords();
  const options = createMemo(() => part(props.question));
  const chosen = createMemo(() => readChosen(props.value));
  const isSaid = () => chosen().some((option) => option !== props.question.none);
  const choose = (option: string) => {
    props.onChange(toggle(props.question, chosen(), option));
    if (option === props.question.none) props.onDone();
  };
  const tile = (option: string, isAbsolute: boolean) => (
    <Tile
      option={option}
      label={props.words.options?.[option] ?? option}
      isChosen={chosen().includes(option)}
      isAbsolute={isAbsolute}
      onChoose={() => choose(option)}
    />
  );
  return (
    <>
      <Tiles count={options().harmless.length + 1}>
        <For each={options().harmless}>{(option) => tile(option, false)}</For>
        <WayTile
          act="that-is-all"
          label={words.sheet.thatIsAll}
          isPrimary={isSaid()}
          isDisabled={!isSaid()}
          onPress={() => props.onDone()}
        />
      </Tiles>
      <Show when={options().absolute.length > 0}>
        <Tiles count={options().absolute.length} isStops>
          <For each={options().absolute}>{(option) => tile(option, true)}</For>
        </Tiles>
      </Show>
    </>
  );
}
