import type { Consultation } from '../../../machines/consultation/consultation';
import { type Clock, readClock } from '../../../shared/records/clock';

/** The places of the bar: two columns of four. */
export const PLACES = 8;

export interface Place {
  readonly chair: number;
  readonly consultation: Consultation | null;
}

export interface RunningClock {
  readonly consultation: Consultation;
  readonly clock: Clock;
  readonly strandNumber: number | null;
  /** The next look or the end, whichever comes first. */
  readonly nextAtMs: number;
}

export interface BarView {
  readonly places: readonly Place[];
  readonly parked: readonly Consultation[];
  /** Open, but their place is taken or lies beyond the lanes. */
  readonly waiting: readonly Consultation[];
  /** Every running clock of everybody, the most urgent first. */
  readonly clocks: readonly RunningClock[];
}

const isRunning = ({ endedAtMs }: Clock): boolean => endedAtMs === null;

/** The running clocks of one client, the most urgent first. */
export const listClocks = (consultation: Consultation, nowMs: number): readonly RunningClock[] =>
  consultation.record.clocks
    .filter(isRunning)
    .map((clock) => ({
      consultation,
      clock,
      strandNumber: consultation.record.strands.find((strand) => strand.clock === clock.id)?.number ?? null,
      nextAtMs: Math.min(readClock(clock, nowMs).nextLookAtMs ?? clock.dueAtMs, clock.dueAtMs),
    }))
    .sort((one, other) => one.nextAtMs - other.nextAtMs);

/** Who sits where, who is away, and what is due next? Checked in tests/src/screens/viewBar.test.tsx. */
export function viewBar(open: readonly Consultation[], chairs: number, nowMs: number): BarView {
  const here = open.filter(({ record }) => record.parked === null);
  const places = Array.from({ length: Math.min(chairs, PLACES) }, (_, index) => ({
    chair: index + 1,
    consultation: here.find(({ record }) => record.chair === index + 1) ?? null,
  }));
  const seated = new Set(places.map(({ consultation }) => consultation?.id));
  return {
    places,
    parked: open.filter(({ record }) => record.parked !== null),
    waiting: here.filter(({ id }) => !seated.has(id)),
    clocks: open
      .flatMap((consultation) => listClocks(consultation, nowMs))
      .sort((one, other) => one.nextAtMs - other.nextAtMs),
  };
}
