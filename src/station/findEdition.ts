import { isDemoHere } from '../storage/demoMark';
import type { Edition } from '../storage/edition';
import { waitAtMost } from '../storage/patience';
import { isPracticeOn } from '../storage/practiceMark';
import type { Top } from '../storage/topFiles';

/** So long the first screen waits for the answer, ms. Assumed because a file is found in a few, and a wall is not blank. */
export const ASSUMED_EDITION_WAIT_MS = 2_000;

const readMarks = async (storage: Top): Promise<Edition> => {
  if (await isPracticeOn(storage)) return 'practice';
  return (await isDemoHere(storage)) ? 'demo' : 'salon';
};

/**
 * Which edition does this tablet show? Practice or the demo exactly when its mark is there; on any doubt, and where the
 * browser does not answer, the salon's own. Checked in tests/src/station/edition.test.ts.
 */
export async function findEdition(storage: Top = navigator.storage): Promise<Edition> {
  try {
    return await waitAtMost(readMarks(storage), ASSUMED_EDITION_WAIT_MS, () => 'salon' as const);
  } catch {
    return 'salon';
  }
}
