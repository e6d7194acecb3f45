import type { Consultation } from '../../../machines/consultation/consultation';
import { type Clock, type ClockReading, readClock } from '../../../shared/records/clock';
import { findSigns } from '../../../shared/records/gradeOutcome';
import { type ConsultationRecord, findStrand, type StrandRecord } from '../../../shared/records/record';
import { type Zone, zones } from '../../../shared/records/zones';
import { msPerMinute } from '../../../shared/units/time';

/** One strand with its clock, as it stands now. */
export interface RunningStrand {
  readonly zone: Zone;
  readonly strand: StrandRecord;
  readonly clock: Clock;
  readonly reading: ClockReading;
  /** Whole minutes by which it may still be extended within the maker's limit; none once it was stretchy. */
  readonly mayExtendMin: number;
}

export interface ProcessingView {
  /** The most urgent first: over, then a look that is due, then whatever ends next. */
  readonly running: readonly RunningStrand[];
  /** Off already, waiting for its outcome until the others are off too. */
  readonly off: readonly StrandRecord[];
  /** Zones of the plan without a running strand, where another one may start. */
  readonly free: readonly Zone[];
}

const urgency = { over: 0, lookDue: 1, nearlyDue: 2, running: 2, ended: 3 } as const;

const compareUrgency = (one: RunningStrand, other: RunningStrand): number =>
  urgency[one.reading.phase] - urgency[other.reading.phase] || one.clock.dueAtMs - other.clock.dueAtMs;

/** By how many whole minutes may this clock still be extended? By none once its limit is past: it has been on for all of it. */
export const countExtensionMin = ({ limitAtMs, dueAtMs }: Clock, nowMs: number): number =>
  nowMs >= limitAtMs ? 0 : Math.max(0, Math.floor((limitAtMs - dueAtMs) / msPerMinute));

const viewStrand = (record: ConsultationRecord, zone: Zone, nowMs: number): readonly RunningStrand[] => {
  const strand = findStrand(record, zone);
  const clock = record.clocks.find(({ id }) => id === strand?.clock);
  if (strand === undefined || clock === undefined) return [];
  const mayExtendMin = findSigns(strand).hasWeakened ? 0 : countExtensionMin(clock, nowMs);
  return [{ zone, strand, clock, reading: readClock(clock, nowMs), mayExtendMin }];
};

/** Which strands are in the mix, and what does each want next? */
export function viewProcessing({ record, state }: Consultation, nowMs: number): ProcessingView {
  const { strands } = state.context.facts;
  return {
    running: zones
      .filter((zone) => strands[zone] === 'running')
      .flatMap((zone) => viewStrand(record, zone, nowMs))
      .sort(compareUrgency),
    off: zones
      .filter((zone) => strands[zone] === 'takenOff')
      .flatMap((zone) => findStrand(record, zone) ?? []),
    free: zones.filter((zone) => ['none', 'current', 'stale'].includes(strands[zone])),
  };
}

/** Which strands are off and still want their outcome? */
export const listAwaitingOutcome = ({ record, state }: Consultation): readonly StrandRecord[] =>
  zones
    .filter((zone) => state.context.facts.strands[zone] === 'takenOff')
    .flatMap((zone) => findStrand(record, zone) ?? []);
