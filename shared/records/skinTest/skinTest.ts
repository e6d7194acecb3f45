import type { PutOnAnswers } from '../forms/skinTest';
import type { Stamp } from '../record';
import { formTicketKey } from '../ticket';
import type { SkinTestEvent } from './event';

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
  /** When and by whom it was read last; null while nobody has. */
  readonly read: Omit<Stamp, 'seq'> | null;
  /** By how much the clock was set back since: it may be so much older than it looks, never younger. */
  readonly olderByMs: number;
  /** Readings that were taken back by name. */
  readonly readingsTakenBack: readonly Named[];
  /** The whole test was noted wrongly, or came off: it stands for nothing. */
  readonly takenBack: Named | null;
  /** Who wrote the newest entry that bears on what stands, and when any entry was written last. */
  readonly newestBy: string;
  readonly newestAtMs: number;
}

const begin = (id: string, { payload, atMs, by }: Extract<SkinTestEvent, { type: 'SKIN_TEST_PUT_ON' }>) => ({
  ...payload,
  id,
  ticketKey: formTicketKey(payload.ticket),
  noted: { atMs, by },
  read: payload.seen === 'notReadYet' ? null : { atMs, by },
  olderByMs: 0,
  readingsTakenBack: [],
  takenBack: null,
  newestBy: by,
  newestAtMs: atMs,
});

const unread = { seen: 'notReadYet', read: null } as const;

function change(test: SkinTest, event: SkinTestEvent): Partial<SkinTest> {
  const { atMs, by } = event;
  switch (event.type) {
    case 'SKIN_TEST_PUT_ON':
      return {};
    case 'SKIN_TEST_READ':
      return { seen: event.payload.seen, read: { atMs, by }, newestBy: by };
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
      return { putOnAtMs: test.putOnAtMs + aheadMs, olderByMs: test.olderByMs + aheadMs };
    }
  }
}

/** The skin test after one more event; null while nothing was put on. Checked in tests/shared/records/skinTest. */
export function advanceSkinTest(id: string, test: SkinTest | null, event: SkinTestEvent): SkinTest | null {
  if (test === null) return event.type === 'SKIN_TEST_PUT_ON' ? begin(id, event) : null;
  return { ...test, ...change(test, event), newestAtMs: event.atMs };
}
