import type { Lesson } from '../../../machines/practice/lesson';
import type { LessonSeed } from '../../../seeds/practice/lessonSeed';
import { lessons } from '../../../seeds/practice/lessons';

/** The seed of a lesson, by its id. */
export function findSeed(id: string): LessonSeed {
  const seed = lessons.find(({ lesson }) => lesson.id === id);
  if (seed === undefined) throw new RangeError(`no lesson ${id}`);
  return seed;
}

export const findLesson = (id: string): Lesson => findSeed(id).lesson;
