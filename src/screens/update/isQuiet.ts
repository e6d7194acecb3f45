import { type BenchStage, findBenchStage } from '../../../shared/hair/benchTrial';
import type { StationState } from '../../station/stationState';
import { isUnderWay } from '../urgent';

/** In the water, or hot from the press. */
const benchRuns: readonly BenchStage[] = ['boiling', 'boiled', 'cooling'];

/**
 * Does nothing run here, and is nobody at the bar, so that the station may be loaded anew? Whoever is parked with nothing on
 * is away; a trial at the bench counts while its clock runs. Before the records are read nobody knows.
 * Checked in tests/src/screens/update.test.tsx.
 */
export const isQuiet = (
  { mode, open, bench }: Pick<StationState, 'mode' | 'open' | 'bench'>,
  nowMs: number,
): boolean =>
  (mode === 'writing' || mode === 'watching') &&
  [...open.values()].every((client) => client.record.parked !== null && !isUnderWay(client)) &&
  bench.every((trial) => trial.takenBack !== null || !benchRuns.includes(findBenchStage(trial, nowMs).stage));
