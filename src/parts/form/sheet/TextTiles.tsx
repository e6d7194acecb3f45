import { For, Show } from 'solid-js';
import type { TextQuestion } from '../../../../shared/records/form';
import { useWords } from '../../useWords';
import { TextBox } from '../TextBox';
import type { ControlProps } from './control';
import { Tile, WayTile } from './Tile';
import { Tiles } from './Tiles';

/** A short text: one of the names the salon keeps, or typed. */
export function TextTiles(props: ControlProps<TextQuestion>) {
  const words = useWords();
  const picks = () => props.picks?.[props.name] ?? [];
  const typed = () => (typeof props.value === 'string' ? props.value : (props.question.or ?? ''));
  const isRefused = () => props.refusals.some(({ path }) => path === props.path);
  const isReady = () => typed().trim() !== '' && !isRefused();
  const takeTyped = () => {
    if (isReady()) props.onDone();
  };
  return (
    <>
      <Show when={picks().length > 0}>
        <Tiles count={picks().length}>
          <For each={picks()}>
            {(pick) => (
              <Tile
                option={pick}
                label={pick}
                isChosen={typed() === pick}
                onChoose={() => {
                  props.onChange(pick);
                  props.onDone();
                }}
              />
            )}
          </For>
        </Tiles>
      </Show>
      <div class="typed-line">
        <TextBox
          ask={props.words.ask}
          path={props.path}
          value={typed()}
          isRefused={isRefused()}
          onChange={props.onChange}
          onEnter={takeTyped}
        />
        <WayTile
          act="text-done"
          label={words.sheet.done}
          isPrimary={isReady()}
          isDisabled={!isReady()}
          onPress={takeTyped}
        />
      </div>
    </>
  );
}
