import { createSignal, For, Show } from 'solid-js';
import type { TimeQuestion } from '../../../shared/records/form';
import { msPerDay } from '../../../shared/units/time';
import type { Words } from '../../words/words';
import { useWords } from '../useWords';
import { nameRefusalId } from './Field';
import type { FieldProps } from './field';

interface QuickTime {
  readonly option: string;
  readonly label: string;
  readonly shiftMs: number;
}

/** Offered in one tap: whole days from now, so at this time of day. */
const listQuickTimes = (tense: TimeQuestion['tense'], { moments }: Words): readonly QuickTime[] =>
  tense === 'past'
    ? [
        { option: '1d', label: moments.yesterday, shiftMs: -msPerDay },
        { option: '2d', label: moments.daysAgo('2'), shiftMs: -2 * msPerDay },
        { option: '3d', label: moments.daysAgo('3'), shiftMs: -3 * msPerDay },
        { option: '7d', label: moments.weekAgo, shiftMs: -7 * msPerDay },
      ]
    : [
        { option: '1d', label: moments.tomorrow, shiftMs: msPerDay },
        { option: '2d', label: moments.inDays('2'), shiftMs: 2 * msPerDay },
        { option: '3d', label: moments.inDays('3'), shiftMs: 3 * msPerDay },
        { option: '7d', label: moments.inWeek, shiftMs: 7 * msPerDay },
      ];

const twoDigits = (value: number): string => String(value).padStart(2, '0');

/** The moment as a date-time field of the browser writes it, in the tablet's own zone. */
const writeLocal = (atMs: number): string => {
  const at = new Date(atMs);
  const day = `${at.getFullYear()}-${twoDigits(at.getMonth() + 1)}-${twoDigits(at.getDate())}`;
  return `${day}T${twoDigits(at.getHours())}:${twoDigits(at.getMinutes())}`;
};

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
  const readLocal = (text: string): number | undefined => {
    const atMs = new Date(text).getTime();
    return Number.isNaN(atMs) ? undefined : atMs;
  };
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
