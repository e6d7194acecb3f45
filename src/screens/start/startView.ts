import type { Consultation } from '../../../machines/consultation/consultation';
import type { Form } from '../../../shared/records/form';
import { openedForm } from '../../../shared/records/forms/course';
import { formTicketKey } from '../../../shared/records/ticket';
import { findSitting } from '../../station/seats';
import type { StationState } from '../../station/stationState';

/** One chair of the salon; `ticket` says whose it is now, null while it is free. */
export interface Seat {
  readonly chair: number;
  readonly ticket: string | null;
}

/** Which chairs are there, and who sits at each? */
export const listSeats = (open: StationState['open'], chairs: number): readonly Seat[] =>
  Array.from({ length: chairs }, (_, index) => ({
    chair: index + 1,
    ticket: findSitting(open, index + 1)?.record.ticket ?? null,
  }));

/** Who is open under this ticket already, however it is typed? Nobody is, under an empty one. */
export function findSameTicket(open: StationState['open'], ticket: unknown): Consultation | undefined {
  const key = typeof ticket === 'string' ? formTicketKey(ticket) : '';
  return key === ''
    ? undefined
    : [...open.values()].find(({ record }) => formTicketKey(record.ticket) === key);
}

/** What is asked to start somebody in a salon of so many chairs. */
export const findStartForm = (chairs: number) =>
  ({
    ticket: openedForm.ticket,
    stylist: openedForm.stylist,
    chair: { ...openedForm.chair, field: { ...openedForm.chair.field, max: chairs } },
  }) as const satisfies Form;
