import { accept, type Result } from '../../shared/result';
import type { Answer, Copies } from './copies';
import type { CopyFailure } from './copyFailure';

/** A rewriting that was begun before: what the log is now, and what keeps a copy from saying so, if anything does. */
export interface Rewritten {
  readonly lines: readonly string[];
  readonly failure: CopyFailure | null;
}

/**
 * Makes a log be other lines in both copies, and leaves nothing of those before. What it is about to be is written down
 * first, whole and apart: until that stands the log is what it was, from then on it is the other one, and whatever the
 * power leaves of the two copies is written anew from there. Checked in tests/src/storage/rewrite.test.ts.
 */
export const rewrite = async (copies: Copies, name: string, lines: readonly string[]): Answer<void> => {
  const prepared = await copies.journal.prepare(name, lines);
  return prepared.ok ? carryOut(copies, name, lines) : prepared;
};

const carryOut = async ({ journal, index }: Copies, name: string, lines: readonly string[]): Answer<void> => {
  const inIndex = await index.exchange(name, lines);
  if (!inIndex.ok) return inIndex;
  const inJournal = await journal.exchange(name, lines);
  return inJournal.ok ? journal.forget(name) : inJournal;
};

/**
 * Which logs were being rewritten when the power failed? Those that were written down whole are rewritten now, the
 * others stay what they were. `only`: just that log.
 */
export const finishRewrites = async (
  copies: Copies,
  only: string | null,
): Promise<Result<ReadonlyMap<string, Rewritten>, CopyFailure>> => {
  const rewrites = await copies.journal.listRewrites();
  if (!rewrites.ok) return rewrites;
  const finished = new Map<string, Rewritten>();
  for (const { name, lines } of rewrites.value) {
    if (only !== null && name !== only) continue;
    const done = lines === null ? await copies.journal.forget(name) : await carryOut(copies, name, lines);
    if (lines !== null) finished.set(name, { lines, failure: done.ok ? null : done.error });
  }
  return accept(finished);
};
