import type { Lesson } from '../../../machines/practice/lesson';
import {
  digestLesson,
  foldPractice,
  type PracticeEvent,
  type PracticeRecord,
} from '../../../machines/practice/practiceEvent';
import type { StationState } from '../../station/stationState';

/** One sitting: its client's id, how it stands, and its lesson where that is still the very one. */
export interface SittingKept {
  readonly id: string;
  readonly log: readonly PracticeEvent[];
  readonly sat: PracticeRecord;
  /** null: the lesson is gone, or was changed since. */
  readonly lesson: Lesson | null;
}

const digests = new WeakMap<Lesson, string>();
function digestOnce(lesson: Lesson): string {
  const known = digests.get(lesson) ?? digestLesson(lesson);
  digests.set(lesson, known);
  return known;
}

/**
 * Every sitting whose client was really started, in order. Checked in tests/src/screens/practice/practice.test.tsx.
 */
export function listSittings(
  { practice, open, closed }: Pick<StationState, 'practice' | 'open' | 'closed'>,
  lessons: readonly Lesson[],
): readonly SittingKept[] {
  const ids = new Set([...open.keys(), ...closed.map(({ id }) => id)]);
  return [...(practice?.sittings ?? [])].flatMap(([id, log]) => {
    const sat = ids.has(id) ? foldPractice(log) : null;
    if (sat === null) return [];
    const lesson = lessons.find((each) => each.id === sat.lessonId && digestOnce(each) === sat.digest);
    return [{ id, log, sat, lesson: lesson ?? null }];
  });
}

/** The longest ticket there is: `openedForm`. */
const LONGEST_TICKET = 12;

/**
 * Under which ticket does she sit down this time? Her own, and from the second sitting on with its number: what was put on
 * or stopped in an earlier one is of nobody else.
 */
export function nameSeat({ id, seat }: Lesson, sittings: readonly SittingKept[]): string {
  const count = sittings.filter(({ sat }) => sat.lessonId === id).length;
  const number = count === 0 ? '' : ` ${count + 1}`;
  return `${seat.ticket.slice(0, LONGEST_TICKET - number.length)}${number}`;
}
