import { makeMoments } from '../makeMoments';
import { locale } from './locale';

/** Moments as they are said at the bar. */
export const moments = {
  ...makeMoments(locale),
  yesterday: 'Ayer',
  daysAgo: (days: string) => `Hace ${days} días`,
  weekAgo: 'Hace una semana',
  tomorrow: 'Mañana',
  inDays: (days: string) => `En ${days} días`,
  inWeek: 'En una semana',
  orType: 'O día y hora',
};
