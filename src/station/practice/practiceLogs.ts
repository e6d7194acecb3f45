import * as v from 'valibot';
import type { Lesson } from '../../../machines/practice/lesson';
import type { SpeedChange } from '../../../machines/practice/practiceClock';
import { type PracticeEvent, practiceEventSchema } from '../../../machines/practice/practiceEvent';
import { checkLesson } from '../../../machines/practice/readLesson';
import { PRACTICE_LOG, readLessonLog } from '../../../shared/records/practiceId';
import type { Json } from '../../storage/json';
import type { Notice } from '../notice';

/** What was practised at this station: the changes of its clock, and what was done in each sitting, by its client. */
export interface PracticeKept {
  readonly changes: readonly SpeedChange[];
  /** The log of each sitting, in the order in which they were begun. */
  readonly sittings: ReadonlyMap<string, readonly PracticeEvent[]>;
  /** Lessons of this salon's own, in the order in which they came. */
  readonly own: readonly Lesson[];
  /** Those that were removed and can be brought back, the last first. */
  readonly removed: readonly Lesson[];
}

interface PracticeRead {
  readonly kept: PracticeKept | null;
  readonly notices: readonly Notice[];
}

/** Logs only ever grow, each by a new list: what was read of a list stays true. */
const known = new WeakMap<
  readonly Json[],
  { readonly events: PracticeEvent[]; readonly notices: Notice[] }
>();

function readEvents(name: string, entries: readonly Json[]) {
  const before = known.get(entries);
  if (before !== undefined) return before;
  const events: PracticeEvent[] = [];
  const notices: Notice[] = [];
  for (const [seq, entry] of entries.entries()) {
    const read = v.safeParse(practiceEventSchema, entry);
    if (read.success) events.push(read.output);
    else notices.push({ kind: 'refusedEntry', name, seq });
  }
  const read = { events, notices };
  known.set(entries, read);
  return read;
}

/** One that is nested too deep to be looked through is none, as any other that is damaged. */
function checkKept(kept: unknown): Lesson | null {
  try {
    const checked = checkLesson(kept);
    return checked.ok ? checked.value : null;
  } catch {
    return null;
  }
}

/** What was kept is judged once; null: it is no lesson that could be played. */
const judged = new WeakMap<PracticeEvent, Lesson | null>();
function judgeKept(event: Extract<PracticeEvent, { type: 'LESSON_KEPT' }>): Lesson | null {
  const known = judged.get(event);
  if (known !== undefined) return known;
  const lesson = checkKept(event.payload.lesson);
  judged.set(event, lesson);
  return lesson;
}

/** Which lessons of its own does this salon have? A damaged one is left out and named. */
function readOwn(events: readonly PracticeEvent[], onDamaged: (event: PracticeEvent) => void) {
  const own = new Map<string, Lesson>();
  const removed = new Map<string, Lesson>();
  for (const event of events) {
    if (event.type === 'LESSON_KEPT') {
      const lesson = judgeKept(event);
      if (lesson === null) onDamaged(event);
      else {
        own.set(lesson.id, lesson);
        removed.delete(lesson.id);
      }
    } else if (event.type === 'LESSON_REMOVED') {
      const lesson = own.get(event.payload.lessonId);
      if (lesson !== undefined) removed.set(lesson.id, lesson);
      own.delete(event.payload.lessonId);
    }
  }
  return { own: [...own.values()], removed: [...removed.values()].reverse() };
}

const beganAt = (log: readonly PracticeEvent[]): number => log[0]?.atMs ?? 0;

/**
 * What was practised here, by the logs of the store? null where nothing ever was. An entry that is none is named and left out. In the log of practice
 * itself a moment is the tablet's own; in that of a lesson it is of practice. Checked in
 * tests/src/station/practice/practising.test.ts.
 */
export function readPractice(logs: ReadonlyMap<string, readonly Json[]>): PracticeRead {
  const named = [...logs].filter(([name]) => name === PRACTICE_LOG || readLessonLog(name) !== null);
  if (named.length === 0) return { kept: null, notices: [] };
  const changes: SpeedChange[] = [];
  const sittings: [string, readonly PracticeEvent[]][] = [];
  const notices: Notice[] = [];
  let lessons: Pick<PracticeKept, 'own' | 'removed'> = { own: [], removed: [] };
  for (const [name, entries] of named) {
    const read = readEvents(name, entries);
    notices.push(...read.notices);
    const id = readLessonLog(name);
    if (id !== null) sittings.push([id, read.events]);
    else {
      lessons = readOwn(read.events, (event) =>
        notices.push({ kind: 'refusedEntry', name, seq: read.events.indexOf(event) }),
      );
      for (const event of read.events) {
        if (event.type === 'SPEED_SET') changes.push({ wallMs: event.atMs, times: event.payload.times });
      }
    }
  }
  sittings.sort(([, one], [, other]) => beganAt(one) - beganAt(other));
  return { kept: { changes, sittings: new Map(sittings), ...lessons }, notices };
}
