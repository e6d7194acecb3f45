import type { SittingResult } from '../../../machines/practice/tellTrainees';

const results: Readonly<Record<SittingResult, string>> = {
  passed: 'Passed',
  notPassed: 'Not passed',
  leftOff: 'Left off',
  underWay: 'Under way',
  notTold: 'Cannot be told any more: the lesson was changed since.',
};

/** Who learned what, for whoever trains. */
export const trainer = {
  title: 'Trainer',
  lead: 'A list of who learned. Nothing of a client stands in it; trainees’ names do: tell them so.',
  reckoning: 'Reckoning how they went …',
  nobodyYet: 'Nobody has sat a lesson here yet.',
  sittings: (count: string) => (count === '1' ? '1 lesson sat' : `${count} lessons sat`),
  results,
  withScore: (result: string, points: string) => `${result} · ${points} of 100`,
  goneLesson: (id: string) => `${id} (changed since, or gone)`,
  rowOf: (by: string, how: string, when: string) => `${by} · ${how} · ${when}`,
  page: (page: string, pages: string) => `Page ${page} of ${pages}`,
  misses: 'Missed most',
  nothingMissed: 'Nothing was missed in a lesson that was sat to its end.',
  redFlag: (flag: string) => `Her hair: ${flag}.`,
  missOf: (missed: string, of: string) => `${missed} of ${of}`,
  missesWhat:
    'In so many of the lessons that had it and were sat to their end. A lesson that was left off counts in none.',
  further: (count: string) => (count === '1' ? 'And one more.' : `And ${count} more.`),
  save: 'Save as a table',
  saved: (name: string) => `Saved as ${name}`,
};
