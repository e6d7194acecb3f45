import {
  type EraseCode,
  listToldForAge,
  TOMBSTONE_VERSION,
  type Tombstone,
} from '../../shared/records/tombstone';
import { accept, type Result, refuse } from '../../shared/result';
import type { Json } from '../storage/json';
import type { Queues } from '../storage/queue';
import type { Board } from './board';
import { listSweeps } from './erased';
import { isInUse, isTicketOpen, listPastKeeping } from './keeping';
import { ERASED_LOG } from './logNames';
import type { Memory } from './memory';
import { SKIN_TESTS } from './skinTests';
import { isPastRead } from './stationState';
import type { SubmitRefusal } from './submitRefusal';
import type { Taking } from './taking';

/** Which records are erased, and why. */
export interface ToErase {
  /** Closed consultations and skin tests, by id. */
  readonly ids: readonly string[];
  readonly code: EraseCode;
}

const toJson = (tombstone: Tombstone): Json => tombstone as unknown as Json;

/**
 * Takes records away for good. The tombstone is written first: from then on they are shown nowhere, and whatever stops
 * the rest, the next start or the next erasing finishes it. Then each log that holds one is rewritten without it.
 * Each works within the line in which consultations are opened. Checked in tests/src/station/erasing.test.ts.
 */
export function makeErasing(
  board: Board,
  { append }: Pick<Taking, 'append'>,
  memory: Memory,
  queues: Queues,
  { now, showLogs }: { readonly now: () => number; readonly showLogs: () => void },
) {
  /** Rewrites whatever still holds what was erased; refused where a copy refuses, and done again it goes on from there. */
  const sweep = (): Promise<Result<void, SubmitRefusal>> =>
    queues.run(SKIN_TESTS, async () => {
      for (const { log } of listSweeps(memory.logs())) {
        const rewritten = await queues.run(log, () => {
          const here = listSweeps(memory.logs()).find((each) => each.log === log);
          return here === undefined ? Promise.resolve(accept(undefined)) : memory.rewrite(log, here.left);
        });
        if (!rewritten.ok) {
          showLogs();
          return refuse({ kind: 'eraseUnfinished', failure: rewritten.error } as const);
        }
      }
      showLogs();
      return accept(undefined);
    });

  /**
   * What another house erased for its age goes here too once it is past this house's own time, though nothing goes by itself
   * here: the salon has said that it is to go. Answers how much went; what protects her stays, as it does for our own age.
   */
  const ripen = async (): Promise<number> => {
    let gone = 0;
    for (const { ids, by, code } of listToldForAge(memory.logs().get(ERASED_LOG) ?? [])) {
      const state = board.read();
      if (!isPastRead(state) || !isInUse(state, now())) return gone;
      const { closed, skinTests } = listPastKeeping(state, now());
      const past = new Set([...closed, ...skinTests].map(({ id }) => id));
      const ripe = ids.filter((id) => past.has(id));
      if (ripe.length === 0) continue;
      const buried = await bury(by, { ids: ripe, code });
      if (!buried.ok) return gone;
      gone += ripe.length;
    }
    return gone;
  };

  const bury = async (by: string, { ids, code }: ToErase): Promise<Result<void, SubmitRefusal>> => {
    const tombstone: Tombstone = { v: TOMBSTONE_VERSION, ids, atMs: now(), by, code };
    const written = await append(ERASED_LOG, toJson(tombstone));
    if (!written.ok) return written;
    showLogs();
    return sweep();
  };

  return {
    sweep,
    ripen,

    erase(by: string, { ids, code }: ToErase): Promise<Result<void, SubmitRefusal>> {
      const state = board.read();
      const { closed, skinTests, unjudged = [] } = state;
      const found = [...closed, ...skinTests, ...unjudged].filter(({ id }) => ids.includes(id));
      const isWhole = ids.length > 0 && new Set(found.map(({ id }) => id)).size === new Set(ids).size;
      if (by === '' || !isWhole) return Promise.resolve(refuse({ kind: 'notNow' }));
      const isOpen = found.some(({ ticketKey }) => isTicketOpen(state, ticketKey));
      return isOpen ? Promise.resolve(refuse({ kind: 'ticketOpen' })) : bury(by, { ids, code });
    },

    /** What another house erased, and what is past its time where the owner chose that it goes by itself: in the name of whoever chose it. */
    async eraseOverdue(): Promise<Result<void, SubmitRefusal>> {
      await ripen();
      const state = board.read();
      const { by, settings } = state.settings;
      if (!settings.erasesByItself || !isInUse(state, now())) return accept(undefined);
      const { closed, skinTests } = listPastKeeping(state, now());
      const ids = [...closed, ...skinTests].map(({ id }) => id);
      return ids.length === 0 ? accept(undefined) : bury(by, { ids, code: 'keptLongEnough' });
    },
  };
}
