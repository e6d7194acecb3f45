import { ASSUMED_SAME_DAY_MS } from '../judgement/lapse';
import type { BowlRecord, ConsultationRecord } from './record';
import { findFelt } from './tonerProof';

const wasSeen = ({ looks }: BowlRecord, hair: 'stretchy' | 'breaking', nowMs: number): boolean =>
  looks.some((look) => look.hair === hair && nowMs - look.atMs <= ASSUMED_SAME_DAY_MS);

/**
 * Has hair given way at a look on this head today? `broke`: nothing else goes on that day. `stretchy`: nothing else until
 * it was rinsed and then felt to spring back. The same mix does no less on the hair beside it, and the ends are the older:
 * common practice, no source. null where it holds, and in logs of models before 5, which never asked.
 * Checked in tests/shared/records/givenWay.test.ts.
 */
export function findGivenWay(
  record: Pick<ConsultationRecord, 'bowls' | 'stretches'>,
  nowMs: number,
): 'broke' | 'stretchy' | null {
  if (record.bowls.some((bowl) => wasSeen(bowl, 'breaking', nowMs))) return 'broke';
  const isStretchy = record.bowls.some(
    (bowl) => wasSeen(bowl, 'stretchy', nowMs) && findFelt(record, bowl.zone)?.stretch !== 'springsBack',
  );
  return isStretchy ? 'stretchy' : null;
}
