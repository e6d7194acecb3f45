import type { Consultation } from '../../../machines/consultation/consultation';
import { type Clock, WARN_BEFORE_MS } from '../../../shared/records/clock';
import { findNextDue } from '../../parts/clockSaid';

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
  /** The next look, or the end once it is near: the moment that is shown. */
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

/** Must this head be on its way to the basin? Nothing on a strand comes before that. */
const isForTheBasin = ({ kind, dueAtMs }: Clock, nowMs: number): boolean =>
  kind === 'head' && dueAtMs - nowMs <= WARN_BEFORE_MS;

/** Heads for the basin first, then by the moment that is shown. */
const compareUrgency =
  (nowMs: number) =>
  (one: RunningClock, other: RunningClock): number =>
    Number(isForTheBasin(other.clock, nowMs)) - Number(isForTheBasin(one.clock, nowMs)) ||
    one.nextAtMs - other.nextAtMs;

/** The same, the most urgent first: heads for the basin, then whatever moment comes next. */
export const sortByUrgency = <T extends RunningClock>(clocks: readonly T[], nowMs: number): T[] =>
  [...clocks].sort(compareUrgency(nowMs));

const isRunning = ({ endedAtMs }: Clock): boolean => endedAtMs === null;

/** The running clocks of one client, the most urgent first. */
export const listClocks = (consultation: Consultation, nowMs: number): readonly RunningClock[] =>
  consultation.record.clocks
    .filter(isRunning)
    .map((clock) => ({
      consultation,
      clock,
      strandNumber: consultation.record.strands.find((strand) => strand.clock === clock.id)?.number ?? null,
      nextAtMs: findNextDue(clock, nowMs).atMs,
    }))
    .sort(compareUrgency(nowMs));

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
    clocks: open.flatMap((consultation) => listClocks(consultation, nowMs)).sort(compareUrgency(nowMs)),
  };
}
