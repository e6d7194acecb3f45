import { readHistory } from '../../../shared/hair/readHistory';
import { placeZone } from '../../../shared/hair/zonePlaces';
import type { Answers } from '../../../shared/records/forms/asked';
import type { ZoneFound } from './viewDecision';

/**
 * How much is cut from the tips, cm: the ends, as the map draws them (ASSUMED_ENDS_CM). Null where hair before the ends
 * failed as well, which no trim takes off. Checked in tests/src/screens/decision/cutFirst.test.tsx.
 */
export function findCutCm(found: readonly ZoneFound[], answers: Answers): number | null {
  const isBeyondTrim = found.some(
    ({ zone, finding }) => zone !== 'ends' && (finding === 'gummy' || finding === 'broken'),
  );
  if (isBeyondTrim) return null;
  const { fromCm, toCm } = placeZone('ends', readHistory(answers).lengthCm.typical);
  return toCm - fromCm;
}
