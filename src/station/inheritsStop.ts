import { hasStandingStop } from '../../shared/records/standingStop';
import { formTicketKey } from '../../shared/records/ticket';
import type { StationState } from './stationState';

/** Was the client with this ticket stopped before, open or closed, by an answer that nobody corrected since? */
export function inheritsStop(
  { open, closed }: Pick<StationState, 'open' | 'closed'>,
  ticket: string,
): boolean {
  const key = formTicketKey(ticket);
  const newest = closed.findLast(({ ticketKey }) => ticketKey === key);
  return (
    newest?.hasStandingStop === true ||
    [...open.values()].some(({ record }) => formTicketKey(record.ticket) === key && hasStandingStop(record))
  );
}
