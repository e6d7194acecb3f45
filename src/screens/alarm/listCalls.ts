import type { Consultation } from '../../../machines/consultation/consultation';
import { type Call, findCall, isHeard } from '../../../shared/records/call';

/** A call that nobody has heard yet. */
export interface UnheardCall extends Call {
  readonly consultation: Consultation;
}

/** By which name is a clock known over all clients? */
export const nameClock = (consultation: Pick<Consultation, 'id'>, clockId: string): string =>
  `${consultation.id}/${clockId}`;

/**
 * Who is called to whom at this moment, and has not been silenced? `silenced` holds, by clock, when this tablet was
 * told to be quiet, also where that could not be written. Checked in tests/src/screens/alarm.test.tsx.
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
        const call = clock.endedAtMs === null ? findCall(clock, nowMs) : null;
        if (call === null) return [];
        const silencedAtMs = silenced.get(nameClock(consultation, clock.id)) ?? null;
        return isHeard(call, silencedAtMs) ? [] : [{ ...call, consultation }];
      }),
    );
