import { isLifting } from '../../../shared/judgement/stops';
import { compareLevel, findLastLevel } from '../../../shared/records/lastLevel';
import type { ConsultationRecord } from '../../../shared/records/record';
import type { Zone } from '../../../shared/records/zones';
import { formatQuantity } from '../../../shared/units/format';
import type { UnitSettings } from '../../../shared/units/quantity';
import type { Words } from '../../words/words';

/**
 * What is worth a word about a level just tapped, beside the last one of this strand? It is kept as it was seen,
 * whatever is said; empty where nothing is. Checked in tests/src/screens/strandTest/levelHeard.test.tsx.
 */
export function sayBesideLast(
  level: number,
  record: ConsultationRecord,
  zone: Zone,
  words: Words,
  units: UnitSettings,
): string {
  const last = findLastLevel(record, zone);
  const beside = last === null ? null : compareLevel(level, last.level);
  if (last === null || beside === null) return '';
  const write = (value: number): string => formatQuantity(value, 'level', units, words.locale);
  return words.strandTest.levelHeard[beside][last.seenAt](write(last.level), write(level - last.level));
}

/**
 * What does a level short of the one she wants come to, where she wants to be lifted? Empty where it is not short.
 * Checked in tests/src/screens/strandTest/levelHeard.test.tsx.
 */
export function sayBesideWanted(
  level: number,
  { answers }: Pick<ConsultationRecord, 'answers'>,
  words: Words,
  units: UnitSettings,
): string {
  const { targetLevel, service = '' } = answers.client ?? {};
  if (targetLevel === undefined || level >= targetLevel || !isLifting(service)) return '';
  const write = (value: number): string => formatQuantity(value, 'level', units, words.locale);
  const by = targetLevel - level;
  return words.strandTest.levelHeard.belowWanted(write(by), by > 1, write(targetLevel));
}
