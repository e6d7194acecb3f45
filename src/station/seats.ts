import type { Consultation } from '../../machines/consultation/consultation';
import type { StationState } from './stationState';
import type { SubmitRefusal } from './submitRefusal';

/** Who sits at this chair? Whoever is parked between visits leaves hers to others. */
export const findSitting = (open: StationState['open'], chair: number): Consultation | undefined =>
  [...open.values()].find(({ record }) => record.parked === null && record.chair === chair);

/**
 * May somebody be started at this chair? Chairs are those of the settings in force.
 * Checked in tests/src/station/seats.test.ts.
 */
export function findChairRefusal(
  { open, settings }: Pick<StationState, 'open' | 'settings'>,
  chair: number,
): SubmitRefusal | null {
  if (chair < 1 || chair > settings.settings.chairs) return { kind: 'noSuchChair' };
  const sitting = findSitting(open, chair);
  return sitting === undefined ? null : { kind: 'chairTaken', ticket: sitting.record.ticket };
}
