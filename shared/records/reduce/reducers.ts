import type { EventOf, EventType } from '../event';
import type { ConsultationRecord, Stamp } from '../record';

/** What each event changes in the record. Pure; trusts its event, which was judged before it was logged. */
export type Reducers = {
  readonly [T in EventType]: (
    record: ConsultationRecord,
    event: EventOf<T>,
    stamp: Stamp,
  ) => Partial<ConsultationRecord>;
};
