import { isAbsoluteRule, type RuleId } from '../../../shared/judgement/rules';
import { listOpenStops } from '../../../shared/judgement/stops';
import { type ClosedRecord, parseClosedLog } from '../../../shared/records/closedRecord';
import type { BowlRecord, ConsultationRecord, StrandRecord } from '../../../shared/records/record';
import { fold } from '../../../shared/records/reduce';
import type { Settings } from '../../../shared/records/settings';
import { type Zone, zones } from '../../../shared/records/zones';
import { msPerMinute } from '../../../shared/units/time';

/** One bowl that was on her, and for how many whole minutes; null where its clock says nothing. */
export interface BowlThen {
  readonly bowl: BowlRecord;
  readonly minutesOn: number | null;
}

/** One zone as it was left: the strand that spoke for it, and what went on. */
export interface ZoneThen {
  readonly zone: Zone;
  readonly strand: StrandRecord | null;
  readonly bowls: readonly BowlThen[];
}

/** A visit that is over, as its own log tells it. */
export interface LastVisit extends Pick<ClosedRecord, 'how' | 'endedAtMs' | 'hasStandingStop'> {
  readonly record: ConsultationRecord;
  readonly zones: readonly ZoneThen[];
  /** Absolute stops that stood at its end. */
  readonly stops: readonly RuleId[];
}

const listBowls = ({ bowls, clocks }: ConsultationRecord, zone: Zone): readonly BowlThen[] =>
  bowls
    .filter((bowl) => bowl.zone === zone && bowl.state === 'rinsed')
    .map((bowl) => {
      const clock = clocks.find(({ id }) => id === bowl.clock);
      const onMs = clock === undefined ? null : (clock.endedAtMs ?? clock.startedAtMs) - clock.startedAtMs;
      return { bowl, minutesOn: onMs === null ? null : Math.round(onMs / msPerMinute) };
    });

/** What was done then? null where its log is not understood here. Checked in tests/src/screens/lastVisit.test.tsx. */
export function viewLastVisit(closed: ClosedRecord, settings: Settings): LastVisit | null {
  const log = parseClosedLog(closed);
  if (log === null) return null;
  const record = fold(closed.id, log);
  const { how, endedAtMs, hasStandingStop } = closed;
  return {
    how,
    endedAtMs,
    hasStandingStop,
    record,
    stops: listOpenStops(record, settings).filter(isAbsoluteRule),
    zones: zones
      .map((zone) => ({
        zone,
        strand: record.strands.findLast((each) => each.zone === zone && !each.isVoid) ?? null,
        bowls: listBowls(record, zone),
      }))
      .filter(({ strand, bowls }) => strand !== null || bowls.length > 0),
  };
}
