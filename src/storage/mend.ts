import { accept, type Result } from '../../shared/result';
import type { AsideMark, AsideNote } from './asideNote';
import type { IndexCopy, JournalCopy } from './copies';
import type { CopyFailure } from './copyFailure';
import type { Plan } from './reconcile';

export interface Copies {
  readonly journal: JournalCopy;
  readonly index: IndexCopy;
}

/** What was set aside on the way, or what broke it off. */
export type Mended = Result<readonly AsideNote[], CopyFailure>;

/**
 * Moves a log aside in both copies. A mark is laid down first and taken up last, so that a power cut in between
 * leaves it known that neither copy counts: done again, it finishes.
 */
export const moveBothAside = async ({ journal, index }: Copies, mark: AsideMark): Promise<Mended> => {
  const marked = await journal.mark(mark);
  if (!marked.ok) return marked;
  const fromJournal = await journal.setAside(mark.name, mark.reason);
  if (!fromJournal.ok) return fromJournal;
  const fromIndex = await index.setAside(mark.name, mark.reason);
  if (!fromIndex.ok) return fromIndex;
  const unmarked = await journal.unmark(mark);
  if (!unmarked.ok) return unmarked;
  return accept([fromJournal.value, fromIndex.value].filter((note) => note !== null));
};

/**
 * Which logs were on their way aside when the power failed? The rest of the way is gone now, in both copies.
 * By name, how that went: a log whose way is not finished counts in neither copy. `only`: just that log.
 * Checked in tests/src/storage/storeAside.test.ts.
 */
export const finishMarks = async (
  copies: Copies,
  only: string | null,
): Promise<Result<ReadonlyMap<string, Mended>, CopyFailure>> => {
  const marks = await copies.journal.listMarks();
  if (!marks.ok) return marks;
  const finished = new Map<string, Mended>();
  for (const mark of marks.value) {
    if (only === null || mark.name === only) finished.set(mark.name, await moveBothAside(copies, mark));
  }
  return accept(finished);
};

/**
 * Makes both copies say what the plan says. Broken off anywhere, the next restore comes to the same log.
 * Checked in tests/src/storage/storeRestore.test.ts and storeProperty.test.ts.
 */
export const mend = async (copies: Copies, name: string, plan: Plan): Promise<Mended> => {
  const reason = plan.journal.setAside;
  if (reason !== null && plan.index.setAside !== null) return moveBothAside(copies, { name, reason });
  const fromIndex = await mendIndex(copies.index, name, plan);
  if (!fromIndex.ok) return fromIndex;
  const fromJournal = await mendJournal(copies.journal, name, plan);
  if (!fromJournal.ok) return fromJournal;
  return accept([...fromIndex.value, ...fromJournal.value]);
};

const mendIndex = async (index: IndexCopy, name: string, { index: step, lines }: Plan): Promise<Mended> => {
  if (step.setAside !== null) {
    const moved = await index.replace(name, step.setAside, lines);
    return moved.ok ? accept(moved.value === null ? [] : [moved.value]) : moved;
  }
  if (step.appendFrom === null) return accept([]);
  const written = await index.append(name, step.appendFrom, lines.slice(step.appendFrom));
  return written.ok ? accept([]) : written;
};

const mendJournal = async (journal: JournalCopy, name: string, plan: Plan): Promise<Mended> => {
  const { journal: step, lines } = plan;
  const moved = step.setAside === null ? accept(null) : await journal.setAside(name, step.setAside);
  if (!moved.ok) return moved;
  const cut = step.cutTail ? await journal.cutTail(name) : accept(null);
  if (!cut.ok) return cut;
  if (step.appendFrom !== null) {
    const written = await journal.append(name, step.appendFrom, lines.slice(step.appendFrom));
    if (!written.ok) return written;
  }
  return accept([moved.value, cut.value].filter((note) => note !== null));
};
