import {
  type NewerDocument,
  type RecordDocument,
  readDocument,
} from '../../shared/records/documents/document';
import { accept, type Result } from '../../shared/result';
import type { Json } from '../storage/json';
import type { Queues } from '../storage/queue';
import type { Board } from './board';
import { leaveOutErased } from './erased';
import { UNJUDGED_LOG } from './logNames';
import type { Memory } from './memory';
import type { SubmitRefusal } from './submitRefusal';
import type { Taking } from './taking';
import { listKept, namesHer, readUnjudged, type UnjudgedWhy, writeUnjudged } from './unjudged';

/** One that came and was not judged, and why. */
export interface LeftOut {
  readonly document: NewerDocument;
  readonly why: UnjudgedWhy;
}

/** What was judged since: by the document's name, why it still is not; null: it is settled, and goes. */
export type JudgedSince = ReadonlyMap<string, UnjudgedWhy | null>;

/**
 * Keeps what other stations tell and this edition cannot judge, in both copies, so that a restart forgets no stop that may
 * stand there. Only the record's erasing, or an edition that can judge it, takes it out again.
 * Checked in tests/src/station/unjudged.test.ts.
 */
export function makeUnjudgedKeeping(
  board: Board,
  { append }: Pick<Taking, 'append'>,
  memory: Pick<Memory, 'logs' | 'rewrite'>,
  queues: Queues,
) {
  const show = (): void => board.show({ unjudged: readUnjudged(leaveOutErased(memory.logs())).unjudged });

  const add = (list: () => readonly Json[]): Promise<Result<void, SubmitRefusal>> =>
    queues.run(UNJUDGED_LOG, async () => {
      const entries = list();
      if (entries.length === 0) return accept(undefined);
      const written = await append(UNJUDGED_LOG, ...entries);
      if (written.ok) show();
      return written;
    });

  const listKnown = (): ReadonlySet<string> =>
    new Set(listKept(memory.logs()).flatMap(({ kept }) => (kept === null ? [] : [kept.document.id])));

  return {
    /** Each once, as far as it says whose it is. */
    note: (cameAtMs: number, leftOut: readonly LeftOut[]) =>
      add(() => {
        const known = listKnown();
        return leftOut
          .filter(({ document }) => !known.has(document.id) && namesHer(document))
          .map(({ document, why }) => writeUnjudged(document, cameAtMs, why));
      }),

    /** What another station kept so, as it lies in its backup. */
    bring: (entries: readonly Json[]) =>
      add(() => {
        const known = listKnown();
        const theirs = listKept(new Map([[UNJUDGED_LOG, entries]]));
        return theirs.flatMap(({ entry, kept }) =>
          kept === null || known.has(kept.document.id) ? [] : [entry],
        );
      }),

    /** Those that this edition understands, to be judged anew. */
    listReadable: (): readonly RecordDocument[] =>
      listKept(leaveOutErased(memory.logs())).flatMap(({ kept }) => {
        const read = kept === null ? null : readDocument(kept.document);
        return read?.ok === true ? [read.value] : [];
      }),

    /** Takes out what was judged. Refused by a copy it stays, and is judged anew at the next start. */
    settle: (judged: JudgedSince): Promise<void> =>
      queues.run(UNJUDGED_LOG, async () => {
        const held = listKept(memory.logs());
        const left = held.flatMap(({ entry, kept }): readonly Json[] => {
          const why = kept === null ? undefined : judged.get(kept.document.id);
          if (why === null) return [];
          return [why === undefined || why === kept?.why ? entry : { ...Object(entry), why }];
        });
        if (held.every(({ entry }, at) => left[at] === entry)) return;
        await memory.rewrite(UNJUDGED_LOG, left);
        show();
      }),
  };
}
