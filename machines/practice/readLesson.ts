import * as v from 'valibot';
import { accept, type Result, refuse } from '../../shared/result';
import { findQuestion, findTrue, hear } from './asking';
import { type Lesson, lessonSchema } from './lesson';
import { checkWish, findWish, readTruth } from './readTruth';

/**
 * What is wrong with a lesson, and where. `notJson`: no such text. `malformed`: not of the shape of a lesson.
 * `notTrueAnswer`: the form does not take it as a true answer. `noSuchQuestion`: a path that no form asks, or one of how
 * she is finished, which is `finish`.
 * `neverTrue`: not even asked closer does she say what is true.
 */
export interface LessonFault {
  readonly path: string;
  readonly code: 'notJson' | 'malformed' | 'notTrueAnswer' | 'noSuchQuestion' | 'neverTrue';
}

function parseJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

/** Is this a lesson that can be played, and if not, what is wrong with it? All faults at once. */
export function checkLesson(entry: unknown): Result<Lesson, readonly LessonFault[]> {
  const read = v.safeParse(lessonSchema, entry);
  if (!read.success) {
    const paths = read.issues.map((issue) => v.getDotPath(issue) ?? '');
    return refuse([...new Set(paths)].map((path) => ({ path, code: 'malformed' as const })));
  }
  const lesson = read.output;
  const truth = readTruth(lesson);
  const faults: LessonFault[] = truth.ok
    ? []
    : truth.error.map(({ path }) => ({ path: `truth.${path}`, code: 'notTrueAnswer' }));
  for (const { path } of checkWish(findWish(lesson)))
    faults.push({ path: `finish.${path}`, code: 'notTrueAnswer' });
  const agreed = lesson.agreesTo === undefined ? [] : checkWish(lesson.agreesTo.finish);
  for (const { path } of agreed) faults.push({ path: `agreesTo.finish.${path}`, code: 'notTrueAnswer' });
  for (const path of Object.keys(lesson.says)) {
    const trueAnswer = findTrue(lesson, path);
    const last = hear(lesson, path, true).means;
    if (findQuestion(path) === null || path.startsWith('heatSpray.'))
      faults.push({ path: `says.${path}`, code: 'noSuchQuestion' });
    else if (trueAnswer !== null && JSON.stringify(last) !== JSON.stringify(trueAnswer))
      faults.push({ path: `says.${path}`, code: 'neverTrue' });
  }
  return faults.length > 0 ? refuse(faults) : accept(lesson);
}

/** What lesson does this text hold, as a trainer wrote it in JSON? Checked in tests/machines/practice/readLesson.test.ts. */
export function readLesson(text: string): Result<Lesson, readonly LessonFault[]> {
  const entry = parseJson(text);
  return entry === undefined ? refuse([{ path: '', code: 'notJson' }]) : checkLesson(entry);
}
