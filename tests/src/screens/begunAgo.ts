import type { Consultation } from '../../../machines/consultation/consultation';

const minute = 60_000;

/** The same clocks, begun so long before `nowMs`; with the looks that were made since. */
export const begunAgo = (
  consultation: Consultation,
  id: string,
  nowMs: number,
  agoMin: number,
  lookedAfterMin: readonly number[] = [],
): Consultation => ({
  ...consultation,
  id,
  record: {
    ...consultation.record,
    id,
    clocks: consultation.record.clocks
      .filter(({ endedAtMs }) => endedAtMs === null)
      .slice(0, 1)
      .map((clock) => {
        const startedAtMs = nowMs - agoMin * minute;
        return {
          ...clock,
          startedAtMs,
          dueAtMs: startedAtMs + (clock.dueAtMs - clock.startedAtMs),
          lookedAtMs: lookedAfterMin.map((after) => startedAtMs + after * minute),
        };
      }),
  },
});
