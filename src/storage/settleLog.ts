import type { Result } from '../../shared/result';
import type { AsideNote } from './asideNote';
import type { Copies } from './copies';
import type { CopyFailure } from './copyFailure';
import type { CopyReading } from './copyReading';
import { mend } from './mend';
import { type MendedNote, reconcile } from './reconcile';
import type { Rewritten } from './rewrite';
import type { CopyTrouble, UnreadNote } from './store';

/** What one log turned out to be. */
export interface Settled {
  readonly lines: readonly string[];
  readonly aside: readonly AsideNote[];
  readonly mended: readonly MendedNote[];
  readonly troubles: readonly CopyTrouble[];
  readonly unread: readonly UnreadNote[];
}

type Read = Result<CopyReading | null, CopyFailure>;

/**
 * Two copies were read: what is this log, and are both the same now?
 * Mends only when both answered. With one out of reach nothing is changed: what the other holds is shown, and
 * what of it cannot be read is named. Checked in tests/src/storage/storeRestore.test.ts and storeFailures.test.ts.
 */
export const settleLog = async (
  copies: Copies,
  name: string,
  journal: Read,
  index: Read,
): Promise<Settled> => {
  if (!journal.ok || !index.ok) return showOnly(name, journal, index);
  const plan = reconcile(name, journal.value, index.value);
  const done = await mend(copies, name, plan);
  if (done.ok) return { ...nothing, lines: plan.lines, aside: done.value, mended: plan.notes };
  return { ...nothing, lines: plan.lines, troubles: [{ ...done.error, name }] };
};

/** A log that counts in neither copy until what failed has been done again. */
export const stopLog = (name: string, failure: CopyFailure): Settled => ({
  ...nothing,
  troubles: [{ ...failure, name }],
});

/** A log whose rewriting is not finished is what it is about to be, and takes nothing; null where nothing is left to do. */
export const standRewritten = (name: string, rewritten: Rewritten | undefined): Settled | null =>
  rewritten === undefined || rewritten.failure === null
    ? null
    : { ...stopLog(name, rewritten.failure), lines: rewritten.lines };

const nothing: Settled = { lines: [], aside: [], mended: [], troubles: [], unread: [] };

const showOnly = (name: string, journal: Read, index: Read): Settled => ({
  ...nothing,
  lines: [journal, index].map(readWholeLines).find((lines) => lines.length > 0) ?? [],
  troubles: [journal, index].flatMap((read) => (read.ok ? [] : [{ ...read.error, name }])),
  unread: [...noteUnread(name, 'journal', journal), ...noteUnread(name, 'index', index)],
});

const readWholeLines = (read: Read): readonly string[] =>
  read.ok && read.value !== null && read.value.fault === null ? read.value.lines : [];

const noteUnread = (name: string, copy: 'journal' | 'index', read: Read): readonly UnreadNote[] => {
  const fault = read.ok ? (read.value?.fault ?? null) : null;
  return fault === null ? [] : [{ name, copy, reason: fault }];
};
