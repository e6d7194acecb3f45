import type { Failing } from '../../../machines/practice/passing';
import type { LessonFault } from '../../../machines/practice/readLesson';
import { practice } from './practice';

const faults: Readonly<Record<LessonFault['code'], string>> = {
  notJson: 'it is cut off, or no JSON',
  malformed: 'not as the key to the file says',
  notTrueAnswer: 'no answer that this question takes',
  noSuchQuestion: 'no question that is asked',
  neverTrue: 'not even asked closer does she say what is true',
};

/** Lessons of the salon's own, by a file. */
export const ownLessons = {
  way: 'Own lessons',
  title: 'Own lessons',
  kicker: 'Invented clients only: nobody’s real history',
  lead: 'Save a lesson, change its text with the key beside you, give it an id of its own, and bring it in.',
  own: 'own',
  save: 'Save as JSON',
  remove: 'Delete',
  undo: (title: string) => `Bring back “${title}”`,
  bring: 'Bring in a lesson',
  key: 'Save the key',
  saved: (name: string) => `Saved as ${name}`,
  came: (title: string) => `“${title}” is here now.`,
  page: (page: string, pages: string) => `Page ${page} of ${pages}`,
  notRead: 'This file cannot be read. Choose it once more.',
  notKept: 'It could not be kept. Try once more.',
  refused: {
    notJson: 'Not taken: the file is cut off, or is no JSON.',
    otherFile: 'Not taken: this is no lesson, but the file of something else.',
    newerVersion: 'Not taken: it was written by a newer edition of this station.',
    unmarked: (places: string) => `Not taken: a claim has no why or no source. Look at ${places}.`,
    faults: (places: string) => `Not taken: ${places}.`,
    sameId: (title: string) =>
      `Not taken: “${title}” has this id and says something else. Give it another id.`,
    cannotBePassed: (why: string) => `Not taken: not even whoever does everything right can pass it. ${why}`,
  },
  faultAt: (path: string, code: LessonFault['code']) => `${path === '' ? 'the file' : path}: ${faults[code]}`,
  sayFailing: (failing: Failing): string => practice.failedBy[failing],
};
