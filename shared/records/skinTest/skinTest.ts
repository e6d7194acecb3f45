import type { JudgedSkinTest } from '../../judgement/skinTest';
import type { PutOnAnswers } from '../forms/skinTest';
import type { Stamp } from '../record';
import { formTicketKey } from '../ticket';
import type { SkinTestEvent } from './event';
import type { StoredEntry } from './told';

interface Named extends Omit<Stamp, 'seq'> {
  readonly code: string;
  readonly words: string;
}

/** One skin test as the fold of its own log: whose it is, how it was done, and what was seen. */
export interface SkinTest extends PutOnAnswers {
  readonly id: string;
  readonly ticketKey: string;
  /** Who noted it, and when: it may have been put on before. */
  readonly noted: Omit<Stamp, 'seq'>;
  /** When and by whom it was read last, at another station by the clock there; null while nobody has. */
  readonly read: (Omit<Stamp, 'seq'> & { readonly isElsewhere?: true }) | null;
  /**
   * When it came in, where it was put on at another station, by this tablet's clock: whatever the clock there says, it has
   * been on since then. Whoever reads it here waits from then on.
   */
  readonly cameAtMs?: number;
  /** By how much the clock was set back since: it may be so much older than it looks, never younger. */
  readonly olderByMs: number;
  /** Readings that were taken back by name. */
  readonly readingsTakenBack: readonly Named[];
  /** The whole test was noted wrongly, or came off: it stands for nothing. */
  readonly takenBack: Named | null;
  /** Who wrote the newest entry that bears on what stands, and when any entry was written last. */
  readonly newestBy: string;
  readonly newestAtMs: number;
  /** What was written last came in from another station: its time is that of another clock. */
  readonly isTold?: true;
}

type Came = StoredEntry['came'];

const stampReading = ({ atMs, by }: SkinTestEvent, came: Came) => ({
  atMs,
  by,
  ...(came === null ? {} : { isElsewhere: true as const }),
});

const begin = (
  id: string,
  event: Extract<SkinTestEvent, { type: 'SKIN_TEST_PUT_ON' }>,
  came: Came,
): SkinTest => ({
  ...event.payload,
  id,
  ticketKey: formTicketKey(event.payload.ticket),
  noted: { atMs: event.atMs, by: event.by },
  read: event.payload.seen === 'notReadYet' ? null : stampReading(event, came),
  ...(typeof came?.atMs === 'number' ? { cameAtMs: came.atMs } : {}),
  olderByMs: 0,
  readingsTakenBack: [],
  takenBack: null,
  newestBy: event.by,
  newestAtMs: event.atMs,
});

const unread = { seen: 'notReadYet', read: null } as const;

function change(test: SkinTest, event: SkinTestEvent, came: Came): Partial<SkinTest> {
  const { atMs, by } = event;
  switch (event.type) {
    case 'SKIN_TEST_PUT_ON':
      return {};
    case 'SKIN_TEST_READ':
      return { seen: event.payload.seen, read: stampReading(event, came), newestBy: by };
    case 'SKIN_TEST_TAKEN_BACK': {
      const { what, code, words } = event.payload;
      const named = { atMs, by, code, words };
      return what === 'test'
        ? { takenBack: named, newestBy: by }
        : { ...unread, readingsTakenBack: [...test.readingsTakenBack, named], newestBy: by };
    }
    case 'CLOCK_CORRECTED': {
      // It has waited for the shorter time and lapses after the longer; a reading ahead of the clock is done again.
      const isAhead = test.seen === 'nothing' && test.read !== null && test.read.atMs > atMs;
      return { olderByMs: test.olderByMs - event.payload.shiftMs, ...(isAhead ? unread : {}) };
    }
    case 'CLOCK_PUT_AHEAD': {
      // By today's clock it was put on later, so it has waited for the shorter time; it lapses after the longer.
      const { aheadMs } = event.payload;
      const moved = { putOnAtMs: test.putOnAtMs + aheadMs, olderByMs: test.olderByMs + aheadMs };
      // It was this clock that was put ahead: by it the test came in later too.
      const isOfThisClock = came === null && test.cameAtMs !== undefined;
      return isOfThisClock ? { ...moved, cameAtMs: (test.cameAtMs ?? 0) + aheadMs } : moved;
    }
  }
}

/** The skin test after one more event, noted here or told; null while nothing was put on. Checked in tests/shared/records/skinTest. */
export function advanceSkinTest(
  id: string,
  test: SkinTest | null,
  event: SkinTestEvent,
  came: Came = null,
): SkinTest | null {
  if (test === null) return event.type === 'SKIN_TEST_PUT_ON' ? begin(id, event, came) : null;
  const { isTold: _isTold, ...before } = test;
  return { ...before, ...change(test, event, came), newestAtMs: event.atMs };
}

/** The same as it is told: when it came in is of this tablet alone. */
export function asTold(test: SkinTest): SkinTest;
export function asTold(test: SkinTest | null): SkinTest | null;
export function asTold(test: SkinTest | null): SkinTest | null {
  if (test === null) return null;
  const { cameAtMs: _cameAtMs, isTold: _isTold, read, ...rest } = test;
  return { ...rest, read: read && { atMs: read.atMs, by: read.by } };
}

/** What the judgement reads of it. When it came in bears on no reading that was made elsewhere, by whoever saw it there. */
export const asJudged = (test: SkinTest): JudgedSkinTest => ({
  ...(test.read?.isElsewhere === true ? asTold(test) : test),
  readAtMs: test.read?.atMs ?? null,
});
