import { createSignal, For, Show } from 'solid-js';
import type { TimeQuestion } from '../../../../shared/records/form';
import { useWords } from '../../useWords';
import { nameRefusalId } from '../Field';
import { listQuickTimes, readLocal, writeLocal } from '../quickTimes';
import type { ControlProps } from './control';
import { Tile, WayTile } from './Tile';
import { Tiles } from './Tiles';

/** A moment: one of a few in one tap, or day and time. */
export function TimeTiles(props: ControlProps<TimeQuestion>) {
  const words = useWords();
  const times = () => listQuickTimes(props.question.tense, words);
  const chosen = () => (typeof props.value === 'number' ? props.value : undefined);
  const [picked, setPicked] = createSignal<{ readonly option: string; readonly atMs: number } | null>(null);
  /** As long as that moment stands; one that was typed since is nobody's tap. */
  const isPicked = (option: string) => picked()?.option === option && picked()?.atMs === chosen();
  const isRefused = () => props.refusals.some(({ path }) => path === props.path);
  const isReady = () => chosen() !== undefined && !isRefused();
  const choose = (option: string, atMs: number) => {
    setPicked({ option, atMs });
    props.onChange(atMs);
    props.onDone();
  };
  return (
    <>
      <Tiles count={times().length} columns={2}>
        <For each={times()}>
          {({ option, label, shiftMs }) => (
            <Tile
              option={option}
              label={label}
              isChosen={isPicked(option)}
              onChoose={() => choose(option, props.nowMs + shiftMs)}
            />
          )}
        </For>
      </Tiles>
      <div class="typed-line">
        <label class="time-box">
          <span>{words.moments.orType}</span>
          <input
            type="datetime-local"
            aria-describedby={nameRefusalId(props.path)}
            value={chosen() === undefined ? '' : writeLocal(chosen() ?? 0)}
            onInput={(event) => props.onChange(readLocal(event.currentTarget.value))}
            onKeyDown={(event) => event.key === 'Enter' && isReady() && props.onDone()}
          />
        </label>
        <WayTile
          act="time-done"
          label={words.sheet.done}
          isPrimary={isReady()}
          isDisabled={!isReady()}
          onPress={() => props.onDone()}
        />
      </div>
      <Show when={chosen()}>{(atMs) => <p class="time-said">{words.moments.dayAndTime(atMs())}</p>}</Show>
    </>
  );
}
