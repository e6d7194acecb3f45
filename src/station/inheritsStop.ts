import type { ConsultationRecord } from '../../shared/records/record';
import { hasStandingStop } from '../../shared/records/standingStop';
import { formTicketKey } from '../../shared/records/ticket';
import type { StationState } from './stationState';

type Known = Pick<StationState, 'open' | 'closed'>;

/** Was the client with this ticket stopped before, open or closed, by an answer that nobody corrected since? */
export function inheritsStop({ open, closed }: Known, ticket: string, except?: string): boolean {
  const key = formTicketKey(ticket);
  const isStopped = closed
    .filter(({ ticketKey }) => ticketKey === key)
    .reduce((stands, each) => each.hasStandingStop || (stands && !each.hasClearedStop), false);
  const others = [...open.values()].filter(
    ({ id, record }) => id !== except && formTicketKey(record.ticket) === key,
  );
  return isStopped || others.some(({ record }) => hasStandingStop(record));
}

/** Was the same ticket stopped in another consultation while this one was open, and nobody said so here? */
export const isStoppedElsewhere = (known: Known, { id, ticket, corrections }: ConsultationRecord): boolean =>
  inheritsStop(known, ticket, id) && !corrections.some(({ answer }) => answer === 'inherited');
