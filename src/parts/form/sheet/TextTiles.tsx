import { For, Show } from 'solid-js';
import type { TextQuestion } from '../../../../shared/records/form';
import { useWords } from '../../useWords';
import { nameRefusalId } from '../Field';
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
  const takeTyped = () => isReady() && props.onDone();
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
        <input
          type="text"
          class="text-box"
          autocomplete="off"
          aria-label={props.words.ask}
          aria-describedby={nameRefusalId(props.path)}
          aria-invalid={isRefused()}
          value={typed()}
          onInput={(event) => props.onChange(event.currentTarget.value)}
          onKeyDown={(event) => event.key === 'Enter' && takeTyped()}
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
