/** How moments are written in one language, in the tablet's own time zone and on a clock of 24 hours. */
export function makeMoments(locale: string) {
  const write = (options: Intl.DateTimeFormatOptions) => {
    const writer = new Intl.DateTimeFormat(locale, { hourCycle: 'h23', ...options });
    return (atMs: number): string => writer.format(atMs);
  };
  const time = write({ hour: '2-digit', minute: '2-digit' });
  const day = write({ weekday: 'long', day: 'numeric', month: 'long' });
  const shortDay = write({ weekday: 'short', day: 'numeric', month: 'short' });
  return {
    /** "14:31" */
    time,
    /** "Thursday, March 5, 14:00" */
    dayAndTime: (atMs: number): string => `${day(atMs)}, ${time(atMs)}`,
    /** "March 5, 2026" */
    date: write({ day: 'numeric', month: 'long', year: 'numeric' }),
    /** "Thu, Mar 5" */
    shortDay,
    /** "Thu, Mar 5, 14:00" */
    shortDayAndTime: (atMs: number): string => `${shortDay(atMs)}, ${time(atMs)}`,
  };
}
