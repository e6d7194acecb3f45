import type { AsideReason, CopyName } from '../storage/asideNote';
import type { CopyFailureKind } from '../storage/copyFailure';
import type { Store } from '../storage/store';
import { BENCH, CLOSED, ERASED_LOG, OPEN, SETTINGS_LOG, SKIN_TEST, UNJUDGED_LOG } from './logNames';

/** Of which kind is a log, without saying which one it is. */
export type LogKind = 'open' | 'closed' | 'skinTest' | 'bench' | 'settings' | 'erased' | 'unjudged' | 'other';

/** What was set aside, without what it is called: names of logs tell of clients. */
export interface AsideKind {
  readonly log: LogKind;
  readonly copy: CopyName;
  readonly reason: AsideReason;
}

/** How both copies stand at this moment. */
export interface Examined {
  /** null: it answers. */
  readonly copies: Readonly<Record<CopyName, CopyFailureKind | null>>;
  /** Over all starts, in the copies that answer. */
  readonly aside: readonly AsideKind[];
}

const kinds: readonly (readonly [begins: string, LogKind])[] = [
  [OPEN, 'open'],
  [CLOSED, 'closed'],
  [SKIN_TEST, 'skinTest'],
  [BENCH, 'bench'],
  [SETTINGS_LOG, 'settings'],
  [ERASED_LOG, 'erased'],
  [UNJUDGED_LOG, 'unjudged'],
];

/** Of which kind is a log of this name? */
export const findLogKind = (name: string): LogKind =>
  kinds.find(([begins]) => name.startsWith(begins))?.[1] ?? 'other';

/** Asks both copies for the settings, which every station has, and mends them where one copy lost them. */
export async function examine(store: Pick<Store, 'reload' | 'listAside'>): Promise<Examined> {
  const read = await store.reload(SETTINGS_LOG);
  const copies: Record<CopyName, CopyFailureKind | null> = { journal: null, index: null };
  if (read.ok) for (const { copy, kind } of read.value.troubles) copies[copy] = kind;
  else {
    // Neither answers, and the first one says why.
    const kind = read.error.copy === null ? 'timedOut' : (read.error.kind as CopyFailureKind);
    Object.assign(copies, { journal: kind, index: kind });
  }
  const aside = await store.listAside();
  return {
    copies,
    aside: aside.map(({ name, copy, reason }) => ({ log: findLogKind(name), copy, reason })),
  };
}
