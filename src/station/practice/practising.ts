import { beginConsultation } from '../../../machines/consultation/consultation';
import type { Lesson } from '../../../machines/practice/lesson';
import { PRACTICE_VERSION, type PracticeEvent, type Speed } from '../../../machines/practice/practiceEvent';
import { nameLessonLog, PRACTICE_LOG } from '../../../shared/records/practiceId';
import type { RawForm } from '../../../shared/records/readForm';
import type { Settings } from '../../../shared/records/settings';
import { accept, type Result, refuse } from '../../../shared/result';
import type { Json } from '../../storage/json';
import type { Board } from '../board';
import { SETTINGS_LOG } from '../logNames';
import type { SubmitRefusal } from '../submitRefusal';
import type { Taking } from '../taking';
import type { Enqueue } from '../tapping';

type Done<T = void> = Promise<Result<T, SubmitRefusal>>;
type Said<T extends PracticeEvent['type']> = Extract<PracticeEvent, { type: T }>;

/** What is said of a sitting beside what its client's own log says. */
export type ToldOfSitting = {
  [T in 'ASKED_CLOSER' | 'HINT_SHOWN' | 'LESSON_ENDED']: Pick<Said<T>, 'type' | 'payload'>;
}['ASKED_CLOSER' | 'HINT_SHOWN' | 'LESSON_ENDED'];

/** A lesson that is about to begin: who sits where, under which rules, and what its log begins with. */
export interface LessonToBegin {
  readonly settings: Settings;
  readonly seat: RawForm;
  readonly begun: Said<'LESSON_BEGUN'>['payload'];
}

/** What is done in practice beside the consultation. In a salon each of them is refused. */
export interface Practising {
  /** Begins a lesson where none is under way: its own log first, then its client at the chair. Answers her id. */
  beginLesson(by: string, lesson: LessonToBegin): Done<string>;
  tellOfSitting(id: string, by: string, said: ToldOfSitting): Done;
  /** Keeps a lesson of this salon's own, in the store of practice alone; the same id once more takes its place. */
  keepLesson(by: string, lesson: Lesson): Done;
  removeLesson(by: string, lessonId: string): Done;
  /** From now on the clock of practice runs so many times as fast. */
  setSpeed(by: string, times: Speed): Done;
}

const stamp = <T extends PracticeEvent['type']>(
  said: Pick<Said<T>, 'type' | 'payload'>,
  by: string,
  atMs: number,
) => ({ v: PRACTICE_VERSION, ...said, atMs, by }) as unknown as Json;

/**
 * Writes what is practised, in the lines of the station. `readWallMs`: the tablet's own clock; without it this is no
 * practice. Checked in tests/src/station/practice/practising.test.ts.
 */
export function makePractising(
  board: Board,
  { append, take }: Pick<Taking, 'append' | 'take'>,
  enqueue: Enqueue,
  {
    now,
    makeId,
    show,
  }: { readonly now: () => number; readonly makeId: () => string; readonly show: () => void },
  readWallMs: (() => number) | null,
): Practising {
  const inPractice =
    <A extends readonly unknown[], T>(line: string, work: (...given: A) => Done<T>) =>
    async (...given: A): Done<T> =>
      readWallMs === null ? refuse({ kind: 'notNow' }) : enqueue(line, () => work(...given));

  const keep = async (name: string, entry: Json): Done => {
    const written = await append(name, entry);
    if (written.ok) show();
    return written;
  };

  return {
    beginLesson: inPractice('opening', async (by: string, { settings, seat, begun }: LessonToBegin) => {
      if (board.read().open.size > 0) return refuse({ kind: 'notNow' });
      const edition = { settings, by, atMs: now() } as unknown as Json;
      const rules = await enqueue(SETTINGS_LOG, () => keep(SETTINGS_LOG, edition));
      if (!rules.ok) return rules;
      const id = makeId();
      const log = stamp({ type: 'LESSON_BEGUN', payload: begun }, by, now());
      const written = await keep(nameLessonLog(id), log);
      if (!written.ok) return written;
      const taken = await take(beginConsultation(id), by, { type: 'OPENED', answers: seat });
      return taken.ok ? accept(id) : taken;
    }),

    tellOfSitting: inPractice(PRACTICE_LOG, async (id: string, by: string, said: ToldOfSitting) =>
      keep(nameLessonLog(id), stamp(said, by, now())),
    ),

    keepLesson: inPractice(PRACTICE_LOG, async (by: string, lesson: Lesson) =>
      keep(PRACTICE_LOG, stamp({ type: 'LESSON_KEPT', payload: { lesson } }, by, readWallMs?.() ?? 0)),
    ),

    removeLesson: inPractice(PRACTICE_LOG, async (by: string, lessonId: string) =>
      keep(PRACTICE_LOG, stamp({ type: 'LESSON_REMOVED', payload: { lessonId } }, by, readWallMs?.() ?? 0)),
    ),

    setSpeed: inPractice(PRACTICE_LOG, async (by: string, times: Speed) =>
      keep(PRACTICE_LOG, stamp({ type: 'SPEED_SET', payload: { times } }, by, readWallMs?.() ?? 0)),
    ),
  };
}
