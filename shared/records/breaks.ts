import type { Mix } from '../judgement/mixes';
import { nameTested } from '../judgement/mixes';
import { isAtLeastAsBad } from './gradeOutcome';
import type { ConsultationRecord, Stamp } from './record';
import type { Zone } from './zones';

/** A strand that broke or gummed: which length, in which mix, for how long, and who saw it when. */
export interface Break extends Pick<Stamp, 'atMs' | 'by'> {
  readonly zone: Zone;
  readonly strand: number;
  readonly mix: Mix;
  readonly how: 'broken' | 'gummy';
}

/**
 * Which strands broke or gummed here? In the order in which they were started; one in the mix as well as one that was
 * found so between the fingers. Checked in tests/shared/records/breaks.test.ts.
 */
export const listBreaks = ({ strands }: Pick<ConsultationRecord, 'strands'>): readonly Break[] =>
  strands.flatMap((strand): readonly Break[] => {
    const { zone, number, ended, outcome } = strand;
    const hasFailed = outcome !== null && isAtLeastAsBad(outcome.grade, 'gummy');
    const seen = ended?.how === 'broke' ? ended : hasFailed ? outcome : null;
    if (seen === null) return [];
    const how = ended?.how === 'broke' || outcome?.grade === 'broken' ? 'broken' : 'gummy';
    return [{ zone, strand: number, mix: nameTested(strand), how, atMs: seen.atMs, by: seen.by }];
  });
