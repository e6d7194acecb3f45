import { type ConsultationRecord, findStrand } from './record';
import { findStartLevel } from './startLevel';
import type { Zone } from './zones';

/** How light this hair was when it was last seen, and when that was: at a look, or as it was told before the start. */
export interface LastLevel {
  readonly level: number;
  readonly seenAt: 'look' | 'start';
}

/** What level did this hair have when it was last seen? null: nobody knows. Checked in tests/shared/records/lastLevel.test.ts. */
export function findLastLevel(record: ConsultationRecord, zone: Zone): LastLevel | null {
  const strand = findStrand(record, zone);
  const looks = strand?.looks ?? [];
  const seen = looks.findLast(({ level }) => typeof level === 'number')?.level;
  if (typeof seen === 'number') return { level: seen, seenAt: 'look' };
  const start = findStartLevel(record.answers, strand ?? { zone });
  return start === null ? null : { level: start, seenAt: 'start' };
}

/**
 * So many levels at once are far. Assumed because lightener takes a strand hardly two levels up from one look to the
 * next, so that a slip of the finger is the likelier reason.
 */
export const ASSUMED_FAR_LEVELS = 2;

/** How a level lies beside the one before it, where that is worth a word. Never a refusal: it is kept as it was seen. */
export type BesideLast = 'darker' | 'farLighter';

/** Is this level darker than the last one, or lighter by so much that it may be a slip? null: it is neither. */
export function compareLevel(level: number, last: number): BesideLast | null {
  if (level < last) return 'darker';
  return level - last >= ASSUMED_FAR_LEVELS ? 'farLighter' : null;
}
