/** The same client however her initials were typed: case, spaces and dots do not count. */
export const formTicketKey = (ticket: string): string =>
  ticket.normalize('NFKC').toUpperCase().replaceAll(/[\s.]/gu, '');
