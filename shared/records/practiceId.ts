/** A letter stands in it that no id of chance has (`src/station/makeId.ts`), so that no record of a salon is taken for practice. */
const BEGINNING = 'practice0';

/** The name of a record of practice, from so much chance: it says for ever, wherever it lies, that nobody was treated. */
export const makePracticeId = (chance: string): string => `${BEGINNING}${chance}`;

/** Is this the name of a record of practice? Then it is in no figure of a day, in no export, and comes into no salon. */
export const isPracticeId = (id: string): boolean => id.startsWith(BEGINNING);

/** The one log of practice itself; that of each lesson begins so too. */
export const PRACTICE_LOG = 'practice';
const LESSON = `${PRACTICE_LOG}-`;

/** The log of what a trainee did in a lesson, beside her client's own. */
export const nameLessonLog = (id: string): string => `${LESSON}${id}`;

/** Of which lesson is this the log? null where it is of none. */
export const readLessonLog = (name: string): string | null =>
  name.startsWith(LESSON) ? name.slice(LESSON.length) : null;

const readId = (entry: unknown): string =>
  typeof entry === 'object' && entry !== null && 'id' in entry ? String(entry.id) : '';

/** Is this log, or anything in it, of practice? By its name, by whose it is, or by a closed record in it. */
export const isOfPractice = (name: string, entries: readonly unknown[]): boolean =>
  name === PRACTICE_LOG ||
  readLessonLog(name) !== null ||
  isPracticeId(name.split('-')[1] ?? '') ||
  entries.some((entry) => isPracticeId(readId(entry)));
