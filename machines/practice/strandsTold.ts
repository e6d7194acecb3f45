import { type Grade, gradeOutcome } from '../../shared/records/gradeOutcome';
import { listOverruns } from '../../shared/records/overruns';
import type { ConsultationRecord, StrandRecord } from '../../shared/records/record';
import type { Zone } from '../../shared/records/zones';
import { shareOf } from './score';
import { seeStrand } from './strandSight';
import type { Sitting } from './strength';

/** A look that fell due and that nobody made. */
export interface MissedLook {
  readonly zone: Zone;
  readonly of: 'strand' | 'head';
  readonly atMs: number;
}

/** Which looks were missed, at strands and on the head? */
export const listMissedLooks = ({ strands, bowls }: ConsultationRecord): readonly MissedLook[] => [
  ...strands.flatMap(({ zone, missedLooksAtMs }) =>
    missedLooksAtMs.map((atMs) => ({ zone, of: 'strand' as const, atMs })),
  ),
  ...bowls.flatMap(({ zone, missedLooksAtMs }) =>
    missedLooksAtMs.map((atMs) => ({ zone, of: 'head' as const, atMs })),
  ),
];

/** Which strands did nobody look at though a look fell due? What came of them was found by the alarm alone. */
export const listUnlooked = ({ strands }: ConsultationRecord): readonly StrandRecord[] =>
  strands.filter(
    ({ ended, looks, missedLooksAtMs }) =>
      ended !== null && ended.how !== 'discarded' && looks.length === 0 && missedLooksAtMs.length > 0,
  );

/** Each strand or head that was left past its time takes this share of the looks. Assumed because one is half of what a look is for. */
export const ASSUMED_LATE_TAKES = 0.5;

/** Which share of the looks that fell due was made, less what was left past its time? null where there was nothing to do in time. */
function shareLooks(record: ConsultationRecord, missed: number): number | null {
  const made = [...record.strands, ...record.bowls].reduce((sum, { looks }) => sum + looks.length, 0);
  const late = listOverruns(record, record.newestAtMs).length;
  if (made + missed + late === 0) return null;
  const share = made + missed === 0 ? 1 : made / (made + missed);
  return Math.max(0, share - late * ASSUMED_LATE_TAKES);
}

/** How did this strand truly come off? */
function findTrueGrade(sitting: Sitting, record: ConsultationRecord, strand: StrandRecord): Grade | null {
  const before = { ...record, strands: record.strands.filter(({ number }) => number <= strand.number) };
  const sight = seeStrand(sitting, before, strand.zone, strand.ended?.atMs ?? record.newestAtMs);
  return sight === null ? null : gradeOutcome(sight, { hasBroken: sight.hasGone, hasWeakened: false });
}

/** Which share of the strands was told as it came off? */
const shareStrands = (sitting: Sitting, record: ConsultationRecord): number | null =>
  shareOf(
    record.strands.filter(({ ended }) => ended?.how !== 'discarded'),
    (strand) => (strand.outcome?.grade === findTrueGrade(sitting, record, strand) ? 1 : 0),
  );

/** Was a strand told to have failed that truly failed? */
export const hasSeenFail = (sitting: Sitting, record: ConsultationRecord): boolean =>
  record.strands.some((strand) =>
    [strand.outcome?.grade, findTrueGrade(sitting, record, strand)].every(
      (grade) => grade === 'gummy' || grade === 'broken',
    ),
  );

/**
 * How much of the looking, and of the telling, was done? Nothing to do only where she was rightly sent away before any
 * strand. Checked in tests/machines/practice/debrief.test.ts.
 */
export function judgeStrands(
  sitting: Sitting,
  record: ConsultationRecord,
  isRight: boolean,
): { readonly looks: number | null; readonly strand: number | null } {
  if (record.strands.length === 0) {
    const share = isRight ? null : 0;
    return { looks: share, strand: share };
  }
  return {
    looks: shareLooks(record, listMissedLooks(record).length),
    strand: shareStrands(sitting, record),
  };
}
