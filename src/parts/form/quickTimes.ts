import type { TimeQuestion } from '../../../shared/records/form';
import { msPerDay } from '../../../shared/units/time';
import type { Words } from '../../words/words';

interface QuickTime {
  readonly option: string;
  readonly label: string;
  readonly shiftMs: number;
}

/** Offered in one tap: whole days from now, so at this time of day. */
export const listQuickTimes = (tense: TimeQuestion['tense'], { moments }: Words): readonly QuickTime[] =>
  tense === 'past'
    ? [
        { option: '1d', label: moments.yesterday, shiftMs: -msPerDay },
        { option: '2d', label: moments.daysAgo('2'), shiftMs: -2 * msPerDay },
        { option: '3d', label: moments.daysAgo('3'), shiftMs: -3 * msPerDay },
        { option: '7d', label: moments.weekAgo, shiftMs: -7 * msPerDay },
      ]
    : [
        { option: '1d', label: moments.tomorrow, shiftMs: msPerDay },
        { option: '2d', label: moments.inDays('2'), shiftMs: 2 * msPerDay },
        { option: '3d', label: moments.inDays('3'), shiftMs: 3 * msPerDay },
        { option: '7d', label: moments.inWeek, shiftMs: 7 * msPerDay },
      ];

const twoDigits = (value: number): string => String(value).padStart(2, '0');

/** The moment as a date-time field of the browser writes it, in the tablet's own zone. */
export const writeLocal = (atMs: number): string => {
  const at = new Date(atMs);
  const day = `${at.getFullYear()}-${twoDigits(at.getMonth() + 1)}-${twoDigits(at.getDate())}`;
  return `${day}T${twoDigits(at.getHours())}:${twoDigits(at.getMinutes())}`;
};

/** What a date-time field says; undefined while it says no moment. */
export const readLocal = (text: string): number | undefined => {
  const atMs = new Date(text).getTime();
  return Number.isNaN(atMs) ? undefined : atMs;
};
