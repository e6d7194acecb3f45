import type { Station } from './station';

/**
 * This window writes no longer from now on, whatever a round with other stations still has under way: only what stands in
 * line already is written. Resolves when nothing writes any more. Checked in tests/src/station/leavePlace.test.ts.
 */
export async function leavePlace(
  station: Pick<Station, 'stopWriting'>,
  sharing: { readonly stop: () => Promise<void> },
  then?: Parameters<Station['stopWriting']>[0],
): Promise<void> {
  // Both begin now: the window closes before anything is waited for.
  await Promise.all([station.stopWriting(then), sharing.stop()]);
}
