import { findLastLevel } from '../../../shared/records/lastLevel';
import type { ConsultationRecord } from '../../../shared/records/record';
import type { Zone } from '../../../shared/records/zones';

const DARKEST = 1;
const LIGHTEST = 10;
/** So many half steps up are offered. Assumed because two levels and a half are the most a strand lifts between two looks. */
const ASSUMED_HALF_STEPS_UP = 5;
/** So many down. Assumed because a look may be read half a level wrong, and the one before as well. */
const ASSUMED_HALF_STEPS_DOWN = 2;

/**
 * Which levels are offered in one tap? About the last one seen; whole ones where nobody knows it. Texts as typed.
 * Checked in tests/src/screens/strandTest/levelPicks.test.tsx.
 */
export function listLevelPicks(record: ConsultationRecord, zone: Zone): readonly string[] {
  const last = findLastLevel(record, zone)?.level ?? null;
  if (last === null) return listAllLevels().filter((level) => Number.isInteger(Number(level)));
  const count = ASSUMED_HALF_STEPS_DOWN + ASSUMED_HALF_STEPS_UP + 1;
  const lowest = Math.max(DARKEST, Math.min(last - ASSUMED_HALF_STEPS_DOWN / 2, LIGHTEST - (count - 1) / 2));
  return Array.from({ length: count }, (_, step) => lowest + step / 2)
    .filter((level) => level <= LIGHTEST)
    .map(String);
}

/** Every level there is, in half steps. */
export const listAllLevels = (): readonly string[] =>
  Array.from({ length: (LIGHTEST - DARKEST) * 2 + 1 }, (_, step) => String(DARKEST + step / 2));
