import { type Mix, nameTested } from '../../shared/judgement/mixes';
import type { RawForm } from '../../shared/records/readForm';
import { type ConsultationRecord, findStrand } from '../../shared/records/record';
import type { Zone } from '../../shared/records/zones';
import { findMixFault } from './mixFaults';

/**
 * What the trainee settled that is no answer of hers: the mix, and the plan where it was changed. Never what was signed away:
 * a stop that truly stands goes on standing, for a new hire is nobody who may answer for it.
 */
export interface Settled {
  readonly plan: RawForm;
  /** The mix of a zone, for as long as it was really tested; where none was, a usual one. */
  readonly findMix: (zone: Zone) => Mix | null;
}

/** A usual mix where the trainee tested none: common practice, no source; a maker's directions come first. */
export const usualMixes: Readonly<Record<'lift' | 'deposit', Mix>> = {
  lift: { line: 'Sandbar powder', developerPercent: 6, ratio: 2, heat: 'none', minutes: 30 },
  deposit: { line: 'Sandbar cream', developerPercent: 3, ratio: 1, heat: 'none', minutes: 20 },
};
/** What did this trainee settle? The mix of a zone is its newest strand's, or that of any other zone; none that is at fault. */
export function readSettled(record: ConsultationRecord, plan: RawForm): Settled {
  const done = record.strands.filter(
    (strand) => strand.ended !== null && strand.ended.how !== 'discarded' && findMixFault(strand) === null,
  );
  const nameMixOf = (zone: Zone): Mix | null => {
    const own = findStrand(record, zone);
    const strand = own !== undefined && done.includes(own) ? own : done.at(-1);
    if (strand === undefined) return null;
    const isWhole = strand.ended?.how === 'takenOff';
    return { ...nameTested(strand), minutes: isWhole ? Math.max(1, strand.minutesOn ?? 0) : strand.minutes };
  };
  return { plan, findMix: nameMixOf };
}
