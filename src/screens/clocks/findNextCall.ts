import type { Consultation } from '../../../machines/consultation/consultation';
import { type Clock, readClock, WARN_BEFORE_MS } from '../../../shared/records/clock';
import { listClocks, type RunningClock } from '../bar/viewBar';

/** Which clock calls next, and when; in the past where somebody has to go there already. */
export interface NextCall extends RunningClock {
  readonly atMs: number;
}

/** The next look, the way to the basin or the end, whichever comes first. */
const findCallMs = (clock: Clock, nowMs: number): number => {
  const endMs = clock.kind === 'head' ? clock.dueAtMs - WARN_BEFORE_MS : clock.dueAtMs;
  return Math.min(endMs, readClock(clock, nowMs).nextLookAtMs ?? endMs);
};

/**
 * Which clock of anybody calls next? null where none runs; drying hair calls nobody. One that waits already, silenced or
 * not, comes before all that will. Checked in tests/src/screens/strandCard/printing.test.tsx.
 */
export function findNextCall(open: readonly Consultation[], nowMs: number): NextCall | null {
  const [first = null] = open
    .filter(({ record }) => record.ended === null)
    .flatMap((consultation) => listClocks(consultation, nowMs))
    .filter(({ clock }) => clock.kind !== 'dry')
    .map((running): NextCall => {
      const { clock, waiting } = running;
      return { ...running, atMs: waiting?.waitsSinceMs ?? findCallMs(clock, nowMs) };
    })
    .sort((one, other) => one.atMs - other.atMs);
  return first;
}
