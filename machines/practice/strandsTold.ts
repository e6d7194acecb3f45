import { type Grade, gradeOutcome } from '../../shared/records/gradeOutcome';
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

/** Which share of the looks that fell due was made? null where none did. */
function shareLooks(record: ConsultationRecord, missed: number): number | null {
  const made = [...record.strands, ...record.bowls].reduce((sum, { looks }) => sum + looks.length, 0);
  return made + missed === 0 ? null : made / (made + missed);
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
