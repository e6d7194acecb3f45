import { toJsonSchema } from '@valibot/to-json-schema';
import * as v from 'valibot';
import type { Settings } from '../../shared/records/settings';
import { accept, type Result, refuse } from '../../shared/result';
import { debrief } from './debrief';
import { type Lesson, lessonSchema } from './lesson';
import { ASSUMED_LONGEST_LESSON_FILE } from './longestLessonFile';
import type { Failing } from './passing';
import { perfect } from './perfectTrainee';
import { digestLesson } from './practiceEvent';
import { checkLesson, type LessonFault } from './readLesson';
import { sitThrough } from './sitThrough';

/** How a file of one lesson says what it is. For ever. */
const FORMAT = 'strandproof.lesson';

/** Raised whenever a lesson that was written before could not be read any more. */
const LESSON_FILE_VERSION = 1;

const headSchema = v.looseObject({ format: v.literal(FORMAT), version: v.pipe(v.number(), v.safeInteger()) });

const fileSchema = v.pipe(
  v.strictObject({
    format: v.literal(FORMAT),
    version: v.literal(LESSON_FILE_VERSION),
    lesson: lessonSchema,
  }),
  v.title('A practice lesson of Strandproof'),
  v.description(
    'One invented client: what is true of her under truth, as it would be tapped, in °C and cm; what she says of it under says; every flag with why and one of the four marks. Which decision is right is worked out and stands nowhere.',
  ),
);

/**
 * Why a lesson is not taken. `notJson`: cut off, or no JSON. `otherFile`: of another program, or another file of this one.
 * `newerVersion`: of a newer edition. `unmarked`: a flag without why or source. `faults`: anything else of its shape or truth,
 * by place. `sameId`: a lesson of that id is here and says something else. `cannotBePassed`: whoever does everything right
 * fails it, by what.
 */
export type LessonRefusal =
  | { readonly code: 'notJson' | 'otherFile' }
  | { readonly code: 'newerVersion'; readonly version: number }
  | { readonly code: 'unmarked'; readonly paths: readonly string[] }
  | { readonly code: 'faults'; readonly faults: readonly LessonFault[] }
  | { readonly code: 'sameId'; readonly id: string; readonly title: string }
  | { readonly code: 'cannotBePassed'; readonly failedBy: readonly Failing[] };

/** So many draws are sat. Assumed because a lesson that nobody can pass fails the first already, and one by luck the next. */
export const ASSUMED_DRAWS_SAT = 3;

/** By what does whoever does everything right fail it? Nothing of a lesson that can be played. */
function findUnfair(lesson: Lesson, house: Settings): readonly Failing[] {
  for (let seed = 0; seed < ASSUMED_DRAWS_SAT; seed += 1) {
    const { practiceLog, consultation, settings } = sitThrough(lesson, perfect, seed, house);
    const told = debrief(lesson, practiceLog, consultation.log, settings);
    if (told === null || !told.isPassed) return told?.failedBy ?? ['decision'];
  }
  return [];
}

function parseJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

const isOfMark = ({ path, code }: LessonFault): boolean =>
  code === 'malformed' && /^flags\.\d+\.(mark|why)$/.test(path);

/**
 * Which lesson does this file hold? Refused by its first reason that is none of the others'. The same lesson once more is
 * taken: nothing changes by it. Checked in tests/machines/practice/lessonFile.test.ts.
 */
export function readLessonFile(
  text: string,
  here: readonly Lesson[],
  house: Settings,
): Result<Lesson, LessonRefusal> {
  if (text.length > ASSUMED_LONGEST_LESSON_FILE) return refuse({ code: 'otherFile' });
  try {
    return readLesson(text, here, house);
  } catch {
    // Nested deeper than can be looked through, or a truth that nobody can sit.
    return refuse({ code: 'faults', faults: [{ path: '', code: 'malformed' }] });
  }
}

function readLesson(text: string, here: readonly Lesson[], house: Settings): Result<Lesson, LessonRefusal> {
  const entry = parseJson(text);
  if (entry === undefined) return refuse({ code: 'notJson' });
  const head = v.safeParse(headSchema, entry);
  if (!head.success) return refuse({ code: 'otherFile' });
  const { version } = head.output;
  if (version > LESSON_FILE_VERSION) return refuse({ code: 'newerVersion', version });
  const checked = checkLesson(head.output.lesson);
  if (!checked.ok) {
    const unmarked = checked.error.filter(isOfMark).map(({ path }) => path);
    if (unmarked.length > 0) return refuse({ code: 'unmarked', paths: unmarked });
    return refuse({ code: 'faults', faults: checked.error });
  }
  if (!v.safeParse(fileSchema, entry).success)
    return refuse({ code: 'faults', faults: [{ path: '', code: 'malformed' }] });
  const lesson = checked.value;
  const known = here.find(({ id }) => id === lesson.id);
  if (known !== undefined && digestLesson(known) !== digestLesson(lesson))
    return refuse({ code: 'sameId', id: known.id, title: known.title });
  const failedBy = findUnfair(lesson, house);
  return failedBy.length > 0 ? refuse({ code: 'cannotBePassed', failedBy }) : accept(lesson);
}

/** A lesson as a file, to begin another one from. */
export const writeLessonFile = (lesson: Lesson): string =>
  `${JSON.stringify({ format: FORMAT, version: LESSON_FILE_VERSION, lesson }, null, 1)}\n`;

/** What each member of such a file may be, as a file beside it: JSON Schema (published: draft 2020-12). */
export const writeLessonSchema = (): string =>
  `${JSON.stringify(toJsonSchema(fileSchema, { target: 'draft-2020-12', typeMode: 'input', errorMode: 'ignore', ignoreActions: ['trim', 'finite'] }), null, 1)}\n`;
