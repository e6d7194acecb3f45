import type { Consultation } from '../../../machines/consultation/consultation';
import { type Call, findCall, isHeard } from '../../../shared/records/call';
import { compareWaiting } from '../../../shared/records/whoFirst';

/** A call that nobody has heard yet. */
export interface UnheardCall extends Call {
  readonly consultation: Consultation;
}

/** By which name is a clock known over all clients? */
export const nameClock = (consultation: Pick<Consultation, 'id'>, clockId: string): string =>
  `${consultation.id}/${clockId}`;

/** By which name is this call known, so that the same clock calling anew is another one? */
export const nameCall = ({ consultation, clock, sinceMs }: UnheardCall): string =>
  `${nameClock(consultation, clock.id)} ${sinceMs}`;

/**
 * Who is called to whom at this moment, and has not been silenced? `silenced` holds, by clock, when this tablet was
 * told to be quiet, also where that could not be written. Whoever waits first stands in front. Checked in tests/src/screens/alarm.test.tsx.
 */
export const listUnheard = (
  open: readonly Consultation[],
  silenced: ReadonlyMap<string, number>,
  nowMs: number,
): readonly UnheardCall[] =>
  open
    .filter(({ record }) => record.ended === null)
    .flatMap((consultation) =>
      consultation.record.clocks.flatMap((clock) => {
        if (clock.endedAtMs !== null) return [];
        const silencedAtMs = silenced.get(nameClock(consultation, clock.id)) ?? null;
        const call = findCall(clock, nowMs, silencedAtMs);
        return call === null || isHeard(call, silencedAtMs) ? [] : [{ ...call, consultation }];
      }),
    )
    .sort(compareWaiting);
