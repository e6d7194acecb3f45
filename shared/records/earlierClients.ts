import { type ClosedRecord, parseClosedLog } from './closedRecord';
import { findLastTime } from './findLastTime';
import type { LastTime } from './lastTime';
import { formTicketKey } from './ticket';

/**
 * Whose closed records begin with what is typed of a ticket? The newest record of each ticket, the newest first; nobody
 * where nothing is typed. Only the ticket is looked at: there may be years of logs.
 * Checked in tests/shared/records/earlierClients.test.ts.
 */
export function listEarlier(closed: readonly ClosedRecord[], typed: string): readonly ClosedRecord[] {
  const key = formTicketKey(typed);
  if (key === '') return [];
  const newest = new Map<string, ClosedRecord>();
  for (const each of [...closed].reverse()) {
    if (each.ticketKey.startsWith(key) && !newest.has(each.ticketKey)) newest.set(each.ticketKey, each);
  }
  return [...newest.values()];
}

/** One earlier client as a list shows her; without `last` nothing of her can be read, or nothing was ever said. */
export interface EarlierClient {
  readonly ticket: string;
  readonly endedAtMs: number;
  readonly chair: number | null;
  readonly last: LastTime | null;
}

/** What is known of one of them: as her ticket was written, where she sat, and what was done. Reads her log. */
export function readEarlier(closed: readonly ClosedRecord[], newest: ClosedRecord): EarlierClient {
  const last = findLastTime(closed, newest.ticketKey);
  const shown = closed.find(({ id }) => id === last?.id) ?? newest;
  const opened = parseClosedLog(shown)?.find(({ type }) => type === 'OPENED');
  const told = opened?.type === 'OPENED' ? opened.payload : null;
  return {
    ticket: told?.ticket ?? newest.ticketKey,
    endedAtMs: shown.endedAtMs,
    chair: told?.chair ?? null,
    last,
  };
}
