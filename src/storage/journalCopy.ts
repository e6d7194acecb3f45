import { accept, type Result } from '../../shared/result';
import { keepAside, readAsideFile } from './asideFiles';
import type { JournalCopy } from './copies';
import { attempt, type CopyFailure } from './copyFailure';
import type { CopyReading } from './copyReading';
import type { JournalFiles } from './journalFiles';
import { readMark, writeMark } from './leavingMark';
import { isLater, isLogName } from './logName';
import { readJournal } from './readJournal';
import { readRewrite, toBytes, writeRewrite } from './rewriteFile';

/**
 * The journal: one append-only file a log, over whatever file system it is given.
 * One call at a time; whoever calls sees to that. Checked in tests/src/storage/journalCopy.test.ts.
 */
export const makeJournalCopy = (files: JournalFiles): JournalCopy => {
  const read = async (name: string): Promise<CopyReading | null> => {
    const bytes = await files.read('journals', name);
    if (bytes === null || bytes.length === 0) return null;
    const { goodBytes: _, ...reading } = readJournal(bytes);
    return reading;
  };

  return {
    readAll: (begin) =>
      attempt('journal', async () => {
        const readings = new Map<string, Result<CopyReading, CopyFailure>>();
        const strangers: string[] = [];
        const later: string[] = [];
        for (const file of await files.list('journals')) {
          if (!isLogName(file) || isLater(file, begin)) {
            (isLogName(file) ? later : strangers).push(file);
            continue;
          }
          const answer = await attempt('journal', () => read(file));
          if (!answer.ok) readings.set(file, answer);
          else if (answer.value !== null) readings.set(file, accept(answer.value));
        }
        return { readings, later, strangers };
      }),

    read: (name) => attempt('journal', () => read(name)),

    append: (name, _from, lines) => attempt('journal', () => files.append('journals', name, toBytes(lines))),

    setAside: (name, reason) =>
      attempt('journal', async () => {
        const bytes = await files.read('journals', name);
        if (bytes === null || bytes.length === 0) return null;
        const note = await keepAside(files, name, reason, bytes);
        await files.remove('journals', name);
        return note;
      }),

    cutTail: (name) =>
      attempt('journal', async () => {
        const bytes = (await files.read('journals', name)) ?? new Uint8Array();
        const { goodBytes, tailBytes } = readJournal(bytes);
        if (tailBytes === 0) return null;
        const note = await keepAside(files, name, 'tornTail', bytes.subarray(goodBytes));
        await files.truncate('journals', name, goodBytes);
        return note;
      }),

    remove: (name) => attempt('journal', () => files.remove('journals', name)),

    exchange: (name, lines) =>
      attempt('journal', async () => {
        await files.remove('journals', name);
        if (lines.length > 0) await files.append('journals', name, toBytes(lines));
      }),

    listAside: () =>
      attempt('journal', async () => {
        const kept = await files.list('aside');
        return kept.map(readAsideFile).filter((note) => note !== null);
      }),

    listMarks: () =>
      attempt('journal', async () => {
        const marks = await files.list('marks');
        return marks.map(readMark).filter((mark) => mark !== null);
      }),

    mark: (mark) => attempt('journal', () => files.append('marks', writeMark(mark), new Uint8Array())),

    unmark: (mark) => attempt('journal', () => files.remove('marks', writeMark(mark))),

    listRewrites: () =>
      attempt('journal', async () => {
        const names = (await files.list('rewrites')).filter(isLogName);
        return Promise.all(
          names.map(async (name) => {
            const bytes = (await files.read('rewrites', name)) ?? new Uint8Array();
            return { name, lines: readRewrite(bytes) };
          }),
        );
      }),

    prepare: (name, lines) =>
      attempt('journal', async () => {
        await files.remove('rewrites', name);
        await files.append('rewrites', name, writeRewrite(lines));
      }),

    forget: (name) => attempt('journal', () => files.remove('rewrites', name)),

    close: () => attempt('journal', () => files.close()),
  };
};
