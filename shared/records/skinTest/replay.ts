import { accept, type Result, refuse } from '../../result';
import type { EntryFault } from '../parseEvent';
import type { Settings } from '../settings';
import { findSkinTestConflict } from './conflict';
import { parseSkinTestEvent } from './event';
import { advanceSkinTest, type SkinTest } from './skinTest';

/** Why the stored log of a skin test is not taken up, and at which entry. */
export interface SkinTestFault {
  readonly seq: number;
  readonly code: EntryFault | 'wentBackInTime' | 'saysOtherwise' | 'empty';
}

/**
 * What skin test does this stored log make, or what is wrong with it? Every entry passes the schema and the judge again
 * under the settings it was judged under. Checked in tests/shared/records/skinTest.
 */
export function replaySkinTest(
  id: string,
  entries: readonly unknown[],
  find: (settingsId: number) => Settings,
): Result<SkinTest, SkinTestFault> {
  let test: SkinTest | null = null;
  for (const [seq, entry] of entries.entries()) {
    const event = parseSkinTestEvent(entry);
    if (!event.ok) return refuse({ seq, code: event.error });
    const { atMs, type, settingsId } = event.value;
    if (atMs < (test?.newestAtMs ?? 0) && type !== 'CLOCK_CORRECTED')
      return refuse({ seq, code: 'wentBackInTime' });
    const conflict = findSkinTestConflict(test, event.value, find(settingsId).profile);
    if (conflict !== null) return refuse({ seq, code: 'saysOtherwise' });
    test = advanceSkinTest(id, test, event.value);
  }
  return test === null ? refuse({ seq: 0, code: 'empty' }) : accept(test);
}
