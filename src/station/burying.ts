import { isFromLater } from '../../shared/records/backupFile';
import type { RecordDocument } from '../../shared/records/documents/document';
import { readErasedIds, readTombstone, takeTold } from '../../shared/records/tombstone';
import { accept, type Result } from '../../shared/result';
import type { Json } from '../storage/json';
import type { Board } from './board';
import { erasesOpen } from './bringIn';
import { listNewErasings } from './erased';
import { ERASED_LOG } from './logNames';
import type { Memory } from './memory';
import type { SubmitRefusal } from './submitRefusal';
import type { Taking } from './taking';

type Done<T = void> = Promise<Result<T, SubmitRefusal>>;

const listIds = ({ body }: RecordDocument): readonly string[] => readErasedIds(takeTold(body)) ?? [];

/** What was erased at another station is erased here. Checked in tests/src/station/sharing.test.ts and takingTurns.test.ts. */
export function makeBurying(
  board: Board,
  { append }: Pick<Taking, 'append'>,
  memory: Pick<Memory, 'logs'>,
  { now, sweep }: { readonly now: () => number; readonly sweep: () => Done },
) {
  const bury = async (tombstones: readonly Json[]): Done => {
    for (const tombstone of tombstones) {
      const written = await append(ERASED_LOG, tombstone);
      if (!written.ok) return written;
    }
    return sweep();
  };

  /**
   * Does it wait? One that names somebody who is open, until she is closed: colour may be on her. And one from a clock that is
   * ahead, which may be years off.
   */
  const waits = (document: RecordDocument): boolean => {
    const ids = new Set(listIds(document));
    const told = readTombstone(document.body);
    if (erasesOpen(board.read(), ids)) return true;
    return told !== null && isFromLater({ madeAtMs: told.atMs }, now());
  };

  return {
    bury,
    /** Answers which of them wait, and what those name. */
    async buryShared(documents: readonly RecordDocument[]) {
      const erasings = documents.filter(({ kind }) => kind === 'erased');
      const waiting = erasings.filter(waits);
      const goes = erasings.filter((each) => !waiting.includes(each));
      const told = goes.map(({ body }) => takeTold(body));
      const fresh = listNewErasings(memory.logs().get(ERASED_LOG) ?? [], told);
      const buried = fresh.length === 0 ? accept(undefined) : await bury(fresh);
      return buried.ok ? accept({ waiting, waitingIds: waiting.flatMap(listIds) }) : buried;
    },
  };
}
