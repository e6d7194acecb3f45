import type { Clock } from '../../../shared/records/clock';

const minute = 60_000;

/** A strand of the ends for 25 minutes: looks at 2, 7, 12, 17, 22 (common practice, no source), at most 45. */
export const makeStrandClock = (startedAtMs: number): Clock => ({
  id: 'strand-ends-1',
  kind: 'strand',
  zone: 'ends',
  startedAtMs,
  looks: { firstAfterMs: 2 * minute, everyMs: 5 * minute },
  dueAtMs: startedAtMs + 25 * minute,
  limitAtMs: startedAtMs + 45 * minute,
  lookedAtMs: [],
  acknowledgedAtMs: null,
  endedAtMs: null,
});
