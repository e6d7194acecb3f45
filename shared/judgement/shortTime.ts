import type { StrandRecord } from '../records/record';

/** For how many of its planned minutes a strand was on. */
export interface ShortTime {
  readonly onMin: number;
  readonly plannedMin: number;
}

/**
 * Did this strand come off before its planned time was up? How many of how many minutes; null where it stood them all,
 * where it runs, broke or was put aside. Whole minutes, as they count for the permit, which lets nothing stay on the
 * head for longer (`nameTested`). Checked in tests/shared/judgement/shortTime.test.ts.
 */
export function findShortTime({
  ended,
  minutesOn,
  minutes,
}: Pick<StrandRecord, 'ended' | 'minutesOn' | 'minutes'>): ShortTime | null {
  if (ended?.how !== 'takenOff' || minutesOn === null || minutesOn >= minutes) return null;
  return { onMin: minutesOn, plannedMin: minutes };
}
