import { debrief } from '../../machines/practice/debrief';
import type { Lesson } from '../../machines/practice/lesson';
import { readLessonFile, writeLessonFile, writeLessonSchema } from '../../machines/practice/lessonFile';
import { settleLesson } from '../../machines/practice/practiceRoom';
import { lessons } from '../../seeds/practice/lessons';
import { sayLesson } from '../../seeds/practice/sayLesson';
import type { Settings } from '../../shared/records/settings';

/** The lessons there are, and the settings each is judged under in this house. */
export interface School {
  readonly lessons: readonly Lesson[];
  readonly settle: (lesson: Lesson, house: Settings) => Settings;
  /** How did a sitting go, by its two logs? */
  readonly debrief: typeof debrief;
  /** A sentence of a lesson in this language. */
  readonly say: typeof sayLesson;
  /** A lesson as a file, the key to it, and back. */
  readonly readFile: typeof readLessonFile;
  readonly writeFile: typeof writeLessonFile;
  readonly writeSchema: typeof writeLessonSchema;
}

/** What is practised with? Reached by a late import alone: a tablet that is not in practice never loads it. */
export const openSchool = (): School => ({
  lessons: lessons.map(({ lesson }) => lesson),
  settle: settleLesson,
  debrief,
  say: sayLesson,
  readFile: readLessonFile,
  writeFile: writeLessonFile,
  writeSchema: writeLessonSchema,
});
