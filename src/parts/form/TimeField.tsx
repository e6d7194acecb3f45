import { createSignal, For, Show } from 'solid-js';
import type { TimeQuestion } from '../../../shared/records/form';
import { useWords } from '../useWords';
import { nameRefusalId } from './Field';
import type { FieldProps } from './field';
import { listQuickTimes, readLocal, writeLocal } from './quickTimes';

/** A moment: one of a few, or day and time. What is chosen is said back in words. */
export function TimeField(props: FieldProps<TimeQuestion>) {
  const words = useWords();
  const chosen = () => (typeof props.value === 'number' ? props.value : undefined);
  const [picked, setPicked] = createSignal<{ readonly option: string; readonly atMs: number } | null>(null);
  const pick = (option: string, atMs: number) => {
    setPicked({ option, atMs });
    props.onChange(atMs);
  };
  /** As long as that moment stands; one that was typed since is nobody's tap. */
  const isPicked = (option: string) => picked()?.option === option && picked()?.atMs === chosen();
  return (
    <div class="options">
      <For each={listQuickTimes(props.question.tense, words)}>
        {({ option, label, shiftMs }) => (
          <button
            type="button"
            class="option"
            data-option={option}
            aria-pressed={isPicked(option)}
            onClick={() => pick(option, props.nowMs + shiftMs)}
          >
            {label}
          </button>
        )}
      </For>
      <label class="time-box">
        <span>{words.moments.orType}</span>
        <input
          type="datetime-local"
          aria-describedby={nameRefusalId(props.path)}
          value={chosen() === undefined ? '' : writeLocal(chosen() ?? 0)}
          onInput={(event) => props.onChange(readLocal(event.currentTarget.value))}
        />
      </label>
      <Show when={chosen()}>{(atMs) => <p class="time-said">{words.moments.dayAndTime(atMs())}</p>}</Show>
    </div>
  );
}
