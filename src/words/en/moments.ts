const write = (options: Intl.DateTimeFormatOptions) => {
  const writer = new Intl.DateTimeFormat('en', { hourCycle: 'h23', ...options });
  return (atMs: number): string => writer.format(atMs);
};

const time = write({ hour: '2-digit', minute: '2-digit' });
const day = write({ weekday: 'long', day: 'numeric', month: 'long' });

/** Moments as they are said at the bar, in the tablet's own time zone. */
export const moments = {
  /** "14:31" */
  time,
  /** "Thursday, March 5, 14:00" */
  dayAndTime: (atMs: number): string => `${day(atMs)}, ${time(atMs)}`,
  now: 'Now',
  hoursAgo: (hours: string) => `${hours} h ago`,
  daysAgo: (days: string) => `${days} days ago`,
  tomorrow: 'Tomorrow',
  inDays: (days: string) => `In ${days} days`,
  orType: 'Or day and time',
};
