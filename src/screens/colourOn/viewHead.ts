import type { Consultation } from '../../../machines/consultation/consultation';
import { type Clock, type ClockReading, readClock } from '../../../shared/records/clock';
import { hasWeakenedOnHead } from '../../../shared/records/headLooks';
import type { BowlRecord } from '../../../shared/records/record';
import type { Settings } from '../../../shared/records/settings';
import { viewMix, type ZoneAtScale } from '../mix/viewMix';
import { countExtensionMin } from '../strandTest/viewProcessing';

/** One bowl on the head with its clock, as it stands now. */
export interface BowlOnHead {
  readonly bowl: BowlRecord;
  readonly clock: Clock;
  readonly reading: ClockReading;
  readonly mayExtendMin: number;
  /** It was stretchy or broke at a look: it is rinsed rather than waited for, and nothing more goes on. */
  readonly isWeak: boolean;
}

export interface HeadView {
  /** The most urgent first: over, then what was stretchy, then the basin warning, then a look that is due. */
  readonly on: readonly BowlOnHead[];
  /** Every other zone: weighed and waiting, or still to be weighed. */
  readonly others: readonly ZoneAtScale[];
}

const urgency = { over: 0, nearlyDue: 2, lookDue: 3, running: 4, ended: 5 } as const;
const WEAK = 1;

const findUrgency = ({ isWeak, reading }: BowlOnHead): number =>
  isWeak && reading.phase !== 'over' ? WEAK : urgency[reading.phase];

const compareUrgency = (one: BowlOnHead, other: BowlOnHead): number =>
  findUrgency(one) - findUrgency(other) || one.clock.dueAtMs - other.clock.dueAtMs;

/** What is on the head, for how long still, and which bowl wants something next? */
export function listOnHead({ record }: Consultation, nowMs: number): readonly BowlOnHead[] {
  return record.bowls
    .filter(({ state }) => state === 'on')
    .flatMap((bowl) => {
      const clock = record.clocks.find(({ id }) => id === bowl.clock);
      if (clock === undefined) return [];
      const mayExtendMin = countExtensionMin(clock, nowMs);
      const isWeak = hasWeakenedOnHead(record, clock.id);
      return [{ bowl, clock, reading: readClock(clock, nowMs), mayExtendMin, isWeak }];
    })
    .sort(compareUrgency);
}

/** What is on, and what else waits at the scale? */
export function viewHead(consultation: Consultation, settings: Settings, nowMs: number): HeadView {
  const on = listOnHead(consultation, nowMs);
  return {
    on,
    others: viewMix(consultation, settings, nowMs).zones.filter(
      ({ zone }) => !on.some(({ bowl }) => bowl.zone === zone),
    ),
  };
}
