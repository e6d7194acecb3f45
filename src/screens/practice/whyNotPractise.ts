import { findReadableAtMs } from '../../../shared/judgement/skinTest';
import type { SkinTest } from '../../../shared/records/skinTest/skinTest';
import { msPerHour } from '../../../shared/units/time';
import type { StationState } from '../../station/stationState';
import { isUnderWay } from '../urgent';

/** A skin test that may be read within so long holds practice up, ms. Assumed because a lesson takes no longer, and nobody is called out of one. */
export const ASSUMED_READ_SOON_MS = msPerHour;

/** For so long after it may be read it is still to be expected today, ms. Assumed because whoever does not come within half a day comes on another. */
export const ASSUMED_READ_TODAY_MS = 12 * msPerHour;

/** Why practice is not entered now. */
export type NotNow = 'watching' | 'onHead' | 'atBar' | 'skinTest';

/**
 * Why may nobody go into practice now? null: nothing speaks against it. Whoever is parked is away; anything in a mix or on a
 * head, somebody at the bar, and a test that is about to be read need the station. Checked in
 * tests/src/screens/practice/whyNotPractise.test.tsx.
 */
export function findNotNow(
  { mode, open, skinTests, settings }: Pick<StationState, 'mode' | 'open' | 'skinTests' | 'settings'>,
  nowMs: number,
): NotNow | null {
  if (mode !== 'writing') return 'watching';
  const clients = [...open.values()];
  if (clients.some(isUnderWay)) return 'onHead';
  if (clients.some(({ record }) => record.parked === null)) return 'atBar';
  const isToRead = (test: SkinTest): boolean => {
    const { takenBack, seen } = test;
    const readableAtMs = findReadableAtMs(test, settings.settings.profile);
    const isNear =
      nowMs >= readableAtMs - ASSUMED_READ_SOON_MS && nowMs <= readableAtMs + ASSUMED_READ_TODAY_MS;
    return takenBack === null && seen === 'notReadYet' && isNear;
  };
  return skinTests.some(isToRead) ? 'skinTest' : null;
}
