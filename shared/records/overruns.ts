import { ASSUMED_SILENT_OVER_MS } from './call';
import type { Clock } from './clock';
import type { ConsultationRecord } from './record';

/** A clock that was let run past its time: which, when it was due, and by how much, ms. */
export interface Overrun extends Pick<Clock, 'id' | 'kind' | 'zone' | 'dueAtMs'> {
  readonly overMs: number;
}

/**
 * Which strands came off, and which heads were rinsed, too late? From ASSUMED_SILENT_OVER_MS on, as the station calls it;
 * one that still runs counts by now. In the order in which they were due. Checked in tests/shared/records/overruns.test.ts.
 */
export const listOverruns = (
  { clocks }: Pick<ConsultationRecord, 'clocks'>,
  nowMs: number,
): readonly Overrun[] =>
  clocks
    .filter(({ kind }) => kind === 'strand' || kind === 'head')
    .map(({ id, kind, zone, dueAtMs, endedAtMs }) => {
      return { id, kind, zone, dueAtMs, overMs: (endedAtMs ?? nowMs) - dueAtMs };
    })
    .filter(({ overMs }) => overMs >= ASSUMED_SILENT_OVER_MS)
    .sort((one, other) => one.dueAtMs - other.dueAtMs);

/** When did looks at strands and heads fall due that nobody made, by the newest entry or by now? */
export const listMissed = ({
  strands,
  bowls,
}: Pick<ConsultationRecord, 'strands' | 'bowls'>): readonly number[] =>
  [...strands, ...bowls].flatMap(({ missedLooksAtMs }) => missedLooksAtMs);
