import { Show } from 'solid-js';
import type { Lesson } from '../../../machines/practice/lesson';
import { useWords } from '../../parts/useWords';
import { useLessonSaying } from './sayingLesson';
import './lessons.css';

/** How a lesson went last, as its tile says it. */
export interface LastSitting {
  readonly id: string;
  readonly result: 'passed' | 'notPassed' | 'leftOff';
  readonly atMs: number;
  readonly by: string;
}

/** One lesson: its title, and how it went last, with when and by whom. */
export function LessonTile(props: {
  readonly lesson: Lesson;
  readonly last: LastSitting | null;
  readonly isDisabled: boolean;
  readonly onOpen: () => void;
}) {
  const words = useWords();
  const say = useLessonSaying();
  const said = () => words.practice;
  const sayResult = (result: LastSitting['result']): string => {
    const { passed, notPassed, leftOff } = said();
    return { passed, notPassed, leftOff }[result];
  };
  return (
    <li>
      <button
        type="button"
        class="lesson-tile"
        data-act={`lesson-${props.lesson.id}`}
        data-result={props.last?.result ?? 'isNew'}
        disabled={props.isDisabled}
        onClick={() => props.onOpen()}
      >
        <svg class="lesson-mark" viewBox="0 0 24 24" aria-hidden="true">
          <path d={marks[props.last?.result ?? 'isNew']} />
        </svg>
        <span class="lesson-words">
          <strong>{say(props.lesson.title)}</strong>
          <Show when={props.last} fallback={<span>{said().isNew}</span>}>
            {(last) => (
              <span>
                {said().when(sayResult(last().result), words.moments.dayAndTime(last().atMs), last().by)}
              </span>
            )}
          </Show>
        </span>
      </button>
    </li>
  );
}

/** A tick, a cross, a bar, a ring: told apart without their colour. */
const marks = {
  passed: 'M2 13 L6 9 L10 13 L19 3 L23 7 L10 21 Z',
  notPassed: 'M4 2 L12 10 L20 2 L22 4 L14 12 L22 20 L20 22 L12 14 L4 22 L2 20 L10 12 L2 4 Z',
  leftOff: 'M3 10 H21 V14 H3 Z',
  isNew: 'M12 3 a9 9 0 1 0 0.1 0 Z M12 6.5 a5.5 5.5 0 1 1 -0.1 0 Z',
} as const;
