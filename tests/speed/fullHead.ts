import { usualGrowth } from '../../shared/heat/growth';
import type { HairHistory } from '../../shared/heat/hairHistory';
import { exactly, makeRange } from '../../shared/units/range';
import { twoYearsWet } from '../shared/heat/histories';

/** Five tools and six times of bleach, half of it not known: the most a head brings to the station. Invented. */
export const fullHead: HairHistory = {
  habits: [
    twoYearsWet,
    {
      ...twoYearsWet,
      tool: 'wand',
      wetness: 'dry',
      settingC: 180,
      daysAWeek: 2,
      weeks: 60,
      stoppedWeeksAgo: 20,
    },
    {
      ...twoYearsWet,
      tool: 'curlingIron',
      wetness: 'unknown',
      settingC: 'unknown',
      daysAWeek: 'unknown',
      weeks: 150,
    },
    {
      ...twoYearsWet,
      tool: 'hotBrush',
      wetness: 'damp',
      settingC: 160,
      weeks: 'unknown',
      stoppedWeeksAgo: 'unknown',
    },
    { ...twoYearsWet, wetness: 'dry', settingC: 220, daysAWeek: 1, weeks: 40.5, stoppedWeeksAgo: 101.25 },
  ],
  bleaches: [
    { weeksAgo: exactly(6), place: 'newGrowth', sureness: 'told' },
    { weeksAgo: exactly(14.5), place: 'oldest', sureness: 'told' },
    { weeksAgo: makeRange(20, 24, 30), place: 'all', sureness: 'told' },
    { weeksAgo: makeRange(30, 40, 80), place: 'band', sureness: 'likely' },
    { weeksAgo: makeRange(40, 60, 120), place: 'unknown', sureness: 'likely' },
    { weeksAgo: makeRange(50, 80, 200), place: 'all', sureness: 'possible' },
  ],
  growth: usualGrowth,
  lengthCm: makeRange(38, 45, 52),
  pigment: 'both',
};

/** 120 places, from the scalp to the tip. */
export const places: readonly number[] = Array.from({ length: 120 }, (_, index) => (index * 45) / 119);
