import { For, Show } from 'solid-js';
import type { TimeQuestion } from '../../../shared/records/form';
import { msPerDay, msPerHour } from '../../../shared/units/time';
import type { Words } from '../../words/words';
import { useWords } from '../useWords';
import { nameRefusalId } from './Field';
import type { FieldProps } from './field';

interface QuickTime {
  readonly option: string;
  readonly label: string;
  readonly shiftMs: number;
}

/** Offered in one tap. 49 h: a skin test put on two days ago has just become readable. */
const listQuickTimes = (tense: TimeQuestion['tense'], { moments }: Words): readonly QuickTime[] =>
  tense === 'past'
    ? [
        { option: 'now', label: moments.now, shiftMs: 0 },
        { option: '49h', label: moments.hoursAgo('49'), shiftMs: -49 * msPerHour },
        { option: '3d', label: moments.daysAgo('3'), shiftMs: -3 * msPerDay },
        { option: '7d', label: moments.daysAgo('7'), shiftMs: -7 * msPerDay },
      ]
    : [
        { option: '1d', label: moments.tomorrow, shiftMs: msPerDay },
        { option: '2d', label: moments.inDays('2'), shiftMs: 2 * msPerDay },
        { option: '3d', label: moments.inDays('3'), shiftMs: 3 * msPerDay },
        { option: '7d', label: moments.inDays('7'), shiftMs: 7 * msPerDay },
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
            onClick={() => props.onChange(props.nowMs + shiftMs)}
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
