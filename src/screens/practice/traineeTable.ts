import type { TraineeRow } from '../../../machines/practice/tellTrainees';
import type { Cell } from '../../../shared/records/table/columns';
import { BOM, writeLines } from '../../../shared/records/table/csv';
import { nameDay } from '../day/dayNames';
import { writeMoment } from '../day/dayTable';

const several = (each: readonly string[]): Cell => (each.length === 0 ? null : each.join('; '));
const yesOrNo = ({ result }: TraineeRow): Cell =>
  result === 'passed' ? 'yes' : result === 'notPassed' ? 'no' : null;

/** The columns of the trainer's table, in their order. Names are for ever: spreadsheets are built on them. */
const columns: readonly (readonly [name: string, find: (row: TraineeRow) => Cell])[] = [
  ['lesson', ({ lessonId }) => lessonId],
  ['title', ({ title }) => title],
  ['trainee', ({ by }) => by],
  ['began', ({ beganAtMs }) => writeMoment(beganAtMs)],
  ['mode', ({ isExam }) => (isExam ? 'examination' : 'hints')],
  ['ended', ({ ended }) => ended],
  ['passed', yesOrNo],
  ['score', ({ score }) => score],
  ['failed_by', ({ failedBy }) => several(failedBy)],
  ['flags_missed', ({ missed }) => several(missed)],
];

/**
 * Who did which lesson, as a table that any spreadsheet opens, made safe as the day's table is. `ended`: finished, leftOff;
 * empty while it is under way. `passed` and `score` are empty where it was left off or cannot be told.
 * Checked in tests/src/screens/practice/traineeTable.test.tsx.
 */
export const writeTraineeTable = (rows: readonly TraineeRow[]): string =>
  BOM +
  writeLines([columns.map(([name]) => name), ...rows.map((row) => columns.map(([, find]) => find(row)))]);

/** Under which name is it handed out on this day? */
export const nameTraineeTable = (atMs: number): string => `strandproof-practice-${nameDay(atMs)}.csv`;
