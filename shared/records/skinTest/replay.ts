import { accept, type Result, refuse } from '../../result';
import type { EntryFault } from '../parseEvent';
import type { Settings } from '../settings';
import { findSkinTestConflict } from './conflict';
import { parseSkinTestEvent } from './event';
import { advanceSkinTest, asTold, type SkinTest } from './skinTest';
import { isTold, listStored } from './told';

/** Why the stored log of a skin test is not taken up, and at which entry. */
export interface SkinTestFault {
  readonly seq: number;
  readonly code: EntryFault | 'wentBackInTime' | 'saysOtherwise' | 'empty';
}

/**
 * What skin test does this stored log make, or what is wrong with it? Every entry passes the schema and the judge again
 * under the settings it was judged under, another house's where it came in from there. Checked in tests/shared/records/skinTest.
 */
export function replaySkinTest(
  id: string,
  entries: readonly unknown[],
  find: (settingsId: number) => Settings,
): Result<SkinTest, SkinTestFault> {
  let test: SkinTest | null = null;
  for (const [seq, { entry, profile, came }] of listStored(entries, find).entries()) {
    const event = parseSkinTestEvent(entry);
    if (!event.ok) return refuse({ seq, code: event.error });
    const { atMs, type } = event.value;
    if (atMs < (test?.newestAtMs ?? 0) && type !== 'CLOCK_CORRECTED')
      return refuse({ seq, code: 'wentBackInTime' });
    // Whoever told it judged by the clock there: when it came in here says nothing of that.
    const conflict = findSkinTestConflict(came === null ? test : asTold(test), event.value, profile);
    if (conflict !== null) return refuse({ seq, code: 'saysOtherwise' });
    test = advanceSkinTest(id, test, event.value, came);
  }
  if (test === null) return refuse({ seq: 0, code: 'empty' });
  return accept(isTold(entries.at(-1)) ? { ...test, isTold: true } : test);
}
