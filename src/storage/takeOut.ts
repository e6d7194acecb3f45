import { accept, type Result } from '../../shared/result';
import type { AsideNote } from './asideNote';
import type { Answer, Copies, LogCopy } from './copies';
import type { CopyFailure } from './copyFailure';
import type { LeavingMark } from './leavingMark';

/** What was set aside on the way, or what broke it off. */
export type TakenOut = Result<readonly AsideNote[], CopyFailure>;

/**
 * Takes a log out of both copies: removed, or moved aside. A mark is laid down first and taken up last, so that a
 * power cut in between leaves it known that neither copy counts: done again, it finishes. (Without the mark, a log
 * half removed had one copy left, and came back shortened when that one was harmed.)
 * Checked in tests/src/storage/storeLeaving.test.ts and storeProperty.test.ts.
 */
export const takeOut = async ({ journal, index }: Copies, mark: LeavingMark): Promise<TakenOut> => {
  const marked = await journal.mark(mark);
  if (!marked.ok) return marked;
  const fromJournal = await takeFrom(journal, mark);
  if (!fromJournal.ok) return fromJournal;
  const fromIndex = await takeFrom(index, mark);
  if (!fromIndex.ok) return fromIndex;
  const unmarked = await journal.unmark(mark);
  if (!unmarked.ok) return unmarked;
  return accept([fromJournal.value, fromIndex.value].filter((note) => note !== null));
};

const takeFrom = async (copy: LogCopy, { name, reason }: LeavingMark): Answer<AsideNote | null> => {
  if (reason !== 'removed') return copy.setAside(name, reason);
  const removed = await copy.remove(name);
  return removed.ok ? accept(null) : removed;
};

/**
 * Which logs were on their way out when the power failed? The rest of the way is gone now, in both copies.
 * By name, how that went: a log whose way is not finished counts in neither copy. `only`: just that log.
 * Checked in tests/src/storage/storeLeaving.test.ts.
 */
export const finishLeaving = async (
  copies: Copies,
  only: string | null,
): Promise<Result<ReadonlyMap<string, TakenOut>, CopyFailure>> => {
  const marks = await copies.journal.listMarks();
  if (!marks.ok) return marks;
  const finished = new Map<string, TakenOut>();
  for (const mark of marks.value) {
    if (only === null || mark.name === only) finished.set(mark.name, await takeOut(copies, mark));
  }
  return accept(finished);
};
