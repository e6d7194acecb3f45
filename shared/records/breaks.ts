import type { Mix } from '../judgement/mixes';
import { nameTested } from '../judgement/mixes';
import { isAtLeastAsBad } from './gradeOutcome';
import { findBreakOnHead } from './headLooks';
import type { ConsultationRecord, Stamp } from './record';
import type { Zone } from './zones';

/** Hair that broke or gummed: which length, in which mix, for how long, and who saw it when. */
export interface Break extends Pick<Stamp, 'atMs' | 'by'> {
  readonly zone: Zone;
  /** Which strand; null: the hair on her head, at a look. */
  readonly strand: number | null;
  readonly mix: Mix;
  readonly how: 'broken' | 'gummy';
}

/** Where did the hair on her head break, under which bowl? */
const listOnHead = ({ bowls }: Pick<ConsultationRecord, 'bowls'>): readonly Break[] =>
  bowls.flatMap((bowl): readonly Break[] => {
    const { zone, line, developerPercent, ratio, heat, minutes } = bowl;
    const mix = { line, developerPercent, ratio, heat, minutes };
    const { atMs, by } = findBreakOnHead(bowl) ?? {};
    return atMs === undefined || by === undefined
      ? []
      : [{ zone, strand: null, mix, how: 'broken', atMs, by }];
  });

/**
 * What broke or gummed here? Strands in the order in which they were started, one in the mix as well as one that was
 * found so between the fingers; then the hair on her head. Checked in tests/shared/records/breaks.test.ts.
 */
export const listBreaks = (record: Pick<ConsultationRecord, 'strands' | 'bowls'>): readonly Break[] => [
  ...listStrands(record),
  ...listOnHead(record),
];

const listStrands = ({ strands }: Pick<ConsultationRecord, 'strands'>): readonly Break[] =>
  strands.flatMap((strand): readonly Break[] => {
    const { zone, number, ended, outcome } = strand;
    const hasFailed = outcome !== null && isAtLeastAsBad(outcome.grade, 'gummy');
    const seen = ended?.how === 'broke' ? ended : hasFailed ? outcome : null;
    if (seen === null) return [];
    const how = ended?.how === 'broke' || outcome?.grade === 'broken' ? 'broken' : 'gummy';
    return [{ zone, strand: number, mix: nameTested(strand), how, atMs: seen.atMs, by: seen.by }];
  });
