import { accept } from '../../shared/result';
import type { Copies, IndexCopy, JournalCopy } from './copies';
import type { Plan } from './reconcile';
import { type TakenOut, takeOut } from './takeOut';

/**
 * Makes both copies say what the plan says. Broken off anywhere, the next restore comes to the same log.
 * Checked in tests/src/storage/storeRestore.test.ts and storeProperty.test.ts.
 */
export const mend = async (copies: Copies, name: string, plan: Plan): Promise<TakenOut> => {
  const reason = plan.journal.setAside;
  if (reason !== null && plan.index.setAside !== null) return takeOut(copies, { name, reason });
  const fromIndex = await mendIndex(copies.index, name, plan);
  if (!fromIndex.ok) return fromIndex;
  const fromJournal = await mendJournal(copies.journal, name, plan);
  if (!fromJournal.ok) return fromJournal;
  return accept([...fromIndex.value, ...fromJournal.value]);
};

const mendIndex = async (index: IndexCopy, name: string, { index: step, lines }: Plan): Promise<TakenOut> => {
  if (step.setAside !== null) {
    const moved = await index.replace(name, step.setAside, lines);
    return moved.ok ? accept(moved.value === null ? [] : [moved.value]) : moved;
  }
  if (step.appendFrom === null) return accept([]);
  const written = await index.append(name, step.appendFrom, lines.slice(step.appendFrom));
  return written.ok ? accept([]) : written;
};

const mendJournal = async (journal: JournalCopy, name: string, plan: Plan): Promise<TakenOut> => {
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
