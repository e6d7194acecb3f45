import { makeMoments } from '../makeMoments';
import { locale } from './locale';

/** Moments as they are said at the bar. */
export const moments = {
  ...makeMoments(locale),
  yesterday: 'Yesterday',
  daysAgo: (days: string) => `${days} days ago`,
  weekAgo: 'A week ago',
  tomorrow: 'Tomorrow',
  inDays: (days: string) => `In ${days} days`,
  inWeek: 'In a week',
  orType: 'Or day and time',
};
