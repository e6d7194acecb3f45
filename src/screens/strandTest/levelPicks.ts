import { type ConsultationRecord, findStrand } from '../../../shared/records/record';
import type { Zone } from '../../../shared/records/zones';

const DARKEST = 1;
const LIGHTEST = 10;
/** So many half steps up are offered. Assumed because two levels and a half are the most a strand lifts between two looks. */
const ASSUMED_HALF_STEPS_UP = 5;
/** So many down. Assumed because a look may be read half a level wrong, and the one before as well. */
const ASSUMED_HALF_STEPS_DOWN = 2;

/** What level did this hair have when it was last seen: at the last look, or as it was told? null: nobody knows. */
function findLastLevel(record: ConsultationRecord, zone: Zone): number | null {
  const looks = findStrand(record, zone)?.looks ?? [];
  const seen = looks.findLast(({ level }) => typeof level === 'number')?.level;
  if (typeof seen === 'number') return seen;
  const told = zone === 'ends' ? record.answers.client?.endsLevel : record.answers.client?.naturalLevel;
  return typeof told === 'number' ? told : null;
}

/** Which levels are offered in one tap? About the last one seen; whole ones where nobody knows it. Texts as typed. */
export function listLevelPicks(record: ConsultationRecord, zone: Zone): readonly string[] {
  const last = findLastLevel(record, zone);
  if (last === null) return listAllLevels().filter((level) => Number.isInteger(Number(level)));
  const lowest = Math.max(DARKEST, Math.min(last - ASSUMED_HALF_STEPS_DOWN / 2, LIGHTEST - 4));
  const count = ASSUMED_HALF_STEPS_DOWN + ASSUMED_HALF_STEPS_UP + 1;
  return Array.from({ length: count }, (_, step) => lowest + step / 2)
    .filter((level) => level <= LIGHTEST)
    .map(String);
}

/** Every level there is, in half steps. */
export const listAllLevels = (): readonly string[] =>
  Array.from({ length: (LIGHTEST - DARKEST) * 2 + 1 }, (_, step) => String(DARKEST + step / 2));
