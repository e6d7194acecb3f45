import { accept, type Result } from '../../shared/result';
import type { AsideNote } from './asideNote';
import type { Copies, CopyContents } from './copies';
import type { CopyFailure } from './copyFailure';
import type { CopyReading } from './copyReading';
import type { Json } from './json';
import { readEntry } from './line';
import { isLater } from './logName';
import { finishRewrites, type Rewritten } from './rewrite';
import { type Settled, settleLog, standRewritten, stopLog } from './settleLog';
import type { CopyTrouble, Restored, UnreadNote } from './store';
import { finishLeaving, type TakenOut } from './takeOut';

export interface RestoredAll {
  readonly restored: Restored;
  /** The failure that stands against logs nobody has seen yet. */
  readonly wholeTrouble: CopyFailure | null;
  readonly standings: ReadonlyMap<string, { readonly next: number; readonly trouble: CopyFailure | null }>;
}

type Contents = Result<CopyContents, CopyFailure>;

/**
 * What is there after a start, and what had to be put right?
 * First finishes what was on its way out or being rewritten, whatever its name, then settles every log that either copy
 * knows, one after the other, but for those that may come later: of these only the names are read.
 * Checked in tests/src/storage/storeRestore.test.ts, storeLeaving.test.ts and storeProperty.test.ts.
 */
export const restoreAll = async (copies: Copies, laterBegin: string | null): Promise<RestoredAll> => {
  const finished = await finishLeaving(copies, null);
  const marks: ReadonlyMap<string, TakenOut> = finished.ok ? finished.value : new Map();
  const begun = finished.ok ? await finishRewrites(copies, null) : finished;
  const rewrites: ReadonlyMap<string, Rewritten> = begun.ok ? begun.value : new Map();
  const journal: Contents = begun.ok ? await copies.journal.readAll(laterBegin) : begun;
  const index: Contents = await copies.index.readAll(laterBegin);
  const settled = new Map<string, Settled>();
  const later = new Set([...listLater(journal), ...listLater(index)]);
  const aside: AsideNote[] = [];
  for (const name of new Set([
    ...marks.keys(),
    ...rewrites.keys(),
    ...listNames(journal),
    ...listNames(index),
  ])) {
    const moved = marks.get(name) ?? accept([]);
    if (isLater(name, laterBegin) && moved.ok && rewrites.get(name)?.failure == null) {
      aside.push(...moved.value);
      continue;
    }
    later.delete(name);
    const stands = standRewritten(name, rewrites.get(name));
    const settle = async () =>
      stands ?? (await settleLog(copies, name, pick(journal, name), pick(index, name)));
    settled.set(name, moved.ok ? withAside(await settle(), moved.value) : stopLog(name, moved.error));
  }
  const all = [...settled.values()];
  const wholeFailures = [journal, index].flatMap((contents) => (contents.ok ? [] : [contents.error]));
  return {
    restored: {
      logs: readLogs(settled),
      later: [...later].sort(),
      aside: [...aside, ...all.flatMap((log) => log.aside)],
      mended: all.flatMap((log) => log.mended),
      troubles: [
        ...wholeFailures.map((failure): CopyTrouble => ({ ...failure, name: null })),
        ...all.flatMap((log) => log.troubles.filter((trouble) => !isAmong(wholeFailures, trouble))),
      ],
      unread: [
        ...noteStrangers('journal', journal),
        ...noteStrangers('index', index),
        ...all.flatMap((log) => log.unread),
      ],
    },
    wholeTrouble: wholeFailures[0] ?? null,
    standings: new Map(
      [...settled].map(([name, log]) => [name, { next: log.lines.length, trouble: log.troubles[0] ?? null }]),
    ),
  };
};

const listNames = (contents: Contents): Iterable<string> =>
  contents.ok ? contents.value.readings.keys() : [];

const listLater = (contents: Contents): readonly string[] => (contents.ok ? contents.value.later : []);

const pick = (contents: Contents, name: string): Result<CopyReading | null, CopyFailure> =>
  contents.ok ? (contents.value.readings.get(name) ?? accept(null)) : contents;

const withAside = (log: Settled, before: readonly AsideNote[]): Settled => ({
  ...log,
  aside: [...before, ...log.aside],
});

const readLogs = (settled: ReadonlyMap<string, Settled>): ReadonlyMap<string, readonly Json[]> => {
  const withEntries = [...settled].filter(([, log]) => log.lines.length > 0);
  return new Map(withEntries.map(([name, log]) => [name, log.lines.map(readEntry)]));
};

const isAmong = (failures: readonly CopyFailure[], trouble: CopyTrouble): boolean =>
  failures.some((failure) => failure.copy === trouble.copy);

const noteStrangers = (copy: UnreadNote['copy'], contents: Contents): readonly UnreadNote[] =>
  contents.ok ? contents.value.strangers.map((name) => ({ name, copy, reason: 'badName' })) : [];
