import { inTurns } from '../tablet/inTurns';
import type { Board } from './board';
import type { Memory } from './memory';
import { judgeMonth, prepareClosed } from './readLogs';

/** What closed in earlier months, while it is still being read. */
export interface Past {
  /**
   * Reads the months, newest first; then `finish`. Given up, it stops after the month it is at. Patient, it tries a month
   * again that no copy answered for, until one does: a stop may lie there. A window that writes nothing need not wait.
   */
  read(finish: () => Promise<void>, isPatient: boolean): Promise<void>;
  /** Answers when all was read and what hung on it is finished; false where it was given up. */
  wait(): Promise<boolean>;
  isRead(): boolean;
  /** Another window writes, and has told all of it or not yet. */
  follow(isAll: boolean): void;
  giveUp(): void;
}

/** So long after a month could not be read it is tried again. Assumed because a copy that is out of reach may answer by then, and a tap waits no longer for it. */
const ASSUMED_TRY_AGAIN_MS = 5_000;

/**
 * Looks through the earlier months while the bar is in use. Whoever needs the past waits for all of it, or is refused: a stop
 * may lie in the oldest month. Checked in tests/src/station/past.test.ts.
 */
export function makePast(board: Board, memory: Memory): Past {
  let turn = 0;
  let isRead = true;
  let settle: (isWhole: boolean) => void = () => undefined;
  let whole = Promise.resolve(true);

  const begin = (): number => {
    turn += 1;
    settle(false);
    isRead = false;
    whole = new Promise((resolve) => {
      settle = resolve;
    });
    return turn;
  };

  return {
    wait: () => whole,
    isRead: () => isRead,

    async read(finish, isPatient) {
      const mine = begin();
      let failed = new Set<string>();
      for (;;) {
        const name = memory.later().find((each) => !failed.has(each));
        if (name === undefined && (failed.size === 0 || !isPatient)) break;
        if (name === undefined) {
          await new Promise((resolve) => setTimeout(resolve, ASSUMED_TRY_AGAIN_MS));
          failed = new Set();
          if (turn !== mine) return;
          continue;
        }
        await memory.readLater(name);
        // Judged here, in turns: all of them at once would hold the page.
        await inTurns(judgeMonth(name, memory.logs().get(name) ?? []));
        if (turn !== mine) return;
        const later = memory.later();
        if (later.includes(name)) failed.add(name);
        const { all } = board.read().months;
        // The last one shows what closed in the same moment.
        if (later.length > 0) board.show({ months: { read: all - later.length, all } });
      }
      await inTurns(prepareClosed(memory.logs()));
      if (turn !== mine) return;
      isRead = true;
      await finish();
      if (turn === mine) settle(true);
    },

    follow(isAll) {
      isRead = isAll;
    },

    giveUp() {
      turn += 1;
      settle(false);
    },
  };
}
