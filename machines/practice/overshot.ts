import { isLifting } from '../../shared/judgement/stops';
import { type ConsultationRecord, findStrand } from '../../shared/records/record';
import { type Zone, zones } from '../../shared/records/zones';
import { seeHead, seeStrand } from './strandSight';
import type { Sitting } from './strength';

/** Hair that was left on until it was lighter than she asked for. */
export interface OvershotPart {
  readonly zone: Zone;
  readonly of: 'strand' | 'head';
  readonly level: number;
  readonly target: number;
}

/** From so many levels above her target it was left on too long. Assumed because a look is good to half a level. */
export const ASSUMED_OVERSHOT_LEVELS = 1;

/**
 * What was lifted past her target, by the newest strand of each zone and on the head? It is to come off when the level is
 * reached, whatever its clock says. Checked in tests/machines/practice/worn.test.ts.
 */
export function listOvershot(sitting: Sitting, record: ConsultationRecord): readonly OvershotPart[] {
  const { service = '', targetLevel: target } = record.answers.client ?? {};
  if (target === undefined || !isLifting(service)) return [];
  const atMs = record.newestAtMs;
  return zones.flatMap((zone) => {
    const strand = findStrand(record, zone);
    const ofStrand = strand?.ended == null ? null : seeStrand(sitting, record, zone, atMs);
    const found = [
      { of: 'strand' as const, level: ofStrand?.level },
      { of: 'head' as const, level: seeHead(sitting, record, zone, atMs)?.level },
    ];
    return found.flatMap(({ of, level }) =>
      level !== undefined && level >= target + ASSUMED_OVERSHOT_LEVELS ? [{ zone, of, level, target }] : [],
    );
  });
}
