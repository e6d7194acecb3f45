import type { NewerDocument, RecordDocument } from '../../shared/records/documents/document';
import { readErasedIds, takeTold } from '../../shared/records/tombstone';
import { accept, type Result, refuse } from '../../shared/result';
import type { RefusedDocument, Taken } from '../storage/replica/replica';
import type { Board } from './board';
import type { Bringing } from './bringing';
import { leaveOutErased, listErased, listHeldBack } from './erased';
import type { HeldSource } from './heldDocuments';
import { CLOSED } from './logNames';
import type { Memory } from './memory';
import { listHeld } from './merging';
import { findSettingsIn } from './readLogs';
import type { SubmitRefusal } from './submitRefusal';

/** So many documents are taken up at one go. Assumed because ten records are written within a tenth of a second, and whoever opens a client waits no longer. */
const ASSUMED_TAKEN_UP_AT_ONCE = 10;

/** What other stations have to do with: what is held here, and how something comes in. */
export interface Sharing {
  readHeld(): HeldSource;
  /** Was this record erased here, or is it to be as soon as nobody of its ticket is open? */
  isErased(recordId: string): boolean;
  /** Did another house erase it for its age? It stays here and is not sent. */
  isHeldBack(recordId: string): boolean;
  takeDocuments(
    documents: readonly RecordDocument[],
    newer?: readonly NewerDocument[],
  ): Promise<Result<Taken, 'notTaken'>>;
}

type InLine = <T>(work: () => Promise<Result<T, SubmitRefusal>>) => Promise<Result<T, SubmitRefusal>>;

/**
 * Takes up what other stations share, a few documents at a time in the line in which clients are opened, and shows all of it
 * at the end. Checked in tests/src/station/sharing.test.ts.
 */
export function makeSharing(
  board: Board,
  memory: Pick<Memory, 'logs'>,
  bringing: Pick<Bringing, 'takeUp' | 'noteNewer' | 'showAll'>,
  inLine: InLine,
): Sharing {
  /** Named by erasings that wait. */
  const waiting = new Set<string>();
  let erasedOf: {
    readonly tombstones: unknown;
    readonly ids: ReadonlySet<string>;
    readonly heldBack: ReadonlySet<string>;
  } | null = null;

  const readErased = () => {
    const { tombstones } = board.read().erasings;
    if (erasedOf?.tombstones !== tombstones) {
      const logs = memory.logs();
      erasedOf = { tombstones, ids: listErased(logs), heldBack: listHeldBack(logs) };
    }
    return erasedOf;
  };

  return {
    readHeld() {
      const logs = leaveOutErased(memory.logs());
      const find = findSettingsIn(logs);
      const apart = new Map([...logs].filter(([name]) => !name.startsWith(CLOSED)));
      return { held: { ...listHeld(apart), closed: board.read().closed }, find };
    },

    isErased: (recordId) => readErased().ids.has(recordId) || waiting.has(recordId),
    isHeldBack: (recordId) => readErased().heldBack.has(recordId),

    async takeDocuments(documents, newer = []) {
      const isNoted = newer.length === 0 || (await inLine(() => bringing.noteNewer(newer))).ok;
      if (!isNoted) return refuse('notTaken');
      const refused: RefusedDocument[] = [];
      const later: string[] = [];
      for (let from = 0; from < documents.length; from += ASSUMED_TAKEN_UP_AT_ONCE) {
        const piece = documents.slice(from, from + ASSUMED_TAKEN_UP_AT_ONCE);
        const taken = await inLine(() => bringing.takeUp(piece));
        if (!taken.ok) return refuse('notTaken');
        refused.push(...taken.value.refused);
        later.push(...taken.value.later);
      }
      for (const { id, kind, body } of documents) {
        if (kind !== 'erased') continue;
        for (const named of readErasedIds(takeTold(body)) ?? []) {
          if (later.includes(id)) waiting.add(named);
          else waiting.delete(named);
        }
      }
      const shown = await inLine(async () => {
        await bringing.showAll();
        return accept(undefined);
      });
      return shown.ok ? accept({ refused, later }) : refuse('notTaken');
    },
  };
}
