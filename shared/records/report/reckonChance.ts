import { estimateChance } from '../../judgement/chance/estimate';
import { priorCoefficients } from '../../judgement/chance/prior';
import { type Said, scoreBrier, splitBrier } from '../../learning/brier';
import { compareSaidAndSeen, type SaidAndSeen } from '../../learning/reliability';
import { gatherTaught } from '../../learning/strandsTaught';
import { type DayRecords, isWithin, listEntries } from '../day/dayRecords';

/** Did as many strands break as was said? By what was said of them before they spoke, and how far off that was all in all. */
export interface ChanceFigures {
  readonly strands: number;
  readonly bands: readonly SaidAndSeen[];
  /** Mean squared miss, 0 to 1; and that of always saying what share broke. null of no strand. */
  readonly score: { readonly ours: number; readonly ofBaseRate: number } | null;
}

/**
 * The chance that strands like this break, as it is said to somebody at a station that has learnt nothing yet, against what the
 * strands of these days did. Only strands that teach: of lightening or lift, given their time or broken
 * (`shared/learning/strandsTaught.ts`). Checked in tests/shared/records/report/reckonReport.test.ts.
 */
export function reckonChance(records: DayRecords): ChanceFigures {
  const kept = listEntries(records).map(({ record: { id }, log }) => ({ id, log }));
  const said = gatherTaught(kept)
    .filter(({ atMs }) => isWithin(records, atMs))
    .map(({ covariates, hasBroken }): Said => {
      return { chance: estimateChance(covariates, priorCoefficients).chance, hasBroken };
    });
  return {
    strands: said.length,
    bands: compareSaidAndSeen(said),
    score: said.length === 0 ? null : { ours: scoreBrier(said), ofBaseRate: splitBrier(said).uncertain },
  };
}
