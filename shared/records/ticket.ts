/** The same client however her initials were typed: case, spaces and dots do not count. */
export const formTicketKey = (ticket: string): string =>
  ticket.normalize('NFKC').toUpperCase().replaceAll(/[\s.]/gu, '');

/** What a ticket must not be: it would say who she is outside this salon. */
export type TooPersonal = 'isBirthDate' | 'isPhone';

/** So many digits and nothing else are a number to call. Assumed because a salon counts its cards in fewer. */
export const ASSUMED_PHONE_DIGITS = 10;
/** With a leading + or 0, or in groups, so many are enough. Assumed because local numbers are no shorter. */
export const ASSUMED_LOCAL_PHONE_DIGITS = 7;

const isDay = (day: number): boolean => day >= 1 && day <= 31;
const isMonth = (month: number): boolean => month >= 1 && month <= 12;
const isYear = (year: number): boolean => year >= 1900 && year <= 2099;

/** Day and month in either order: both are written. */
const isDayAndMonth = (one: number, other: number): boolean =>
  (isDay(one) && isMonth(other)) || (isMonth(one) && isDay(other));

/** Three figures in groups, or eight without any: six without could as well be a card's number. */
function isDate(ticket: string): boolean {
  const grouped = /^(\d{1,4})[-./ ]+(\d{1,2})[-./ ]+(\d{1,4})$/.exec(ticket);
  if (grouped !== null) {
    const [one, two, three] = grouped.slice(1).map(Number) as [number, number, number];
    const hasYearFirst = (grouped[1]?.length ?? 0) > 2;
    return hasYearFirst ? isYear(one) && isDayAndMonth(two, three) : isDayAndMonth(one, two);
  }
  if (!/^\d{8}$/.test(ticket)) return false;
  const at = (from: number, to: number) => Number(ticket.slice(from, to));
  return (
    (isYear(at(0, 4)) && isMonth(at(4, 6)) && isDay(at(6, 8))) ||
    (isYear(at(4, 8)) && isDayAndMonth(at(0, 2), at(2, 4)))
  );
}

function isPhone(ticket: string): boolean {
  if (!/^\+?[\d\s()./-]+$/.test(ticket)) return false;
  const digits = ticket.replaceAll(/\D/g, '').length;
  if (digits >= ASSUMED_PHONE_DIGITS) return true;
  const isWritten = /^\+|^0[1-9]|\d[\s()./-]+\d/.test(ticket);
  return isWritten && digits >= ASSUMED_LOCAL_PHONE_DIGITS;
}

/**
 * Does this look like a date of birth or a number to call, which no ticket may be? Anything with a letter in it is a code
 * of the salon's own. A look-alike is refused and typed another way; nothing is lost by it.
 * Checked in tests/shared/records/ticket.test.ts.
 */
export function findTooPersonal(ticket: string): TooPersonal | null {
  const text = ticket.normalize('NFKC').trim();
  if (isDate(text)) return 'isBirthDate';
  return isPhone(text) ? 'isPhone' : null;
}
