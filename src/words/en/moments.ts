import { makeMoments } from '../makeMoments';
import { locale } from './locale';

/** Moments as they are said at the bar. */
export const moments = {
  ...makeMoments(locale),
  now: 'Now',
  hoursAgo: (hours: string) => `${hours} h ago`,
  daysAgo: (days: string) => `${days} days ago`,
  tomorrow: 'Tomorrow',
  inDays: (days: string) => `In ${days} days`,
  orType: 'Or day and time',
};
