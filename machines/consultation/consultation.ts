import { initialTransition, type SnapshotFrom, transition } from 'xstate';
import type { ConsultationEvent } from '../../shared/records/event';
import { beginRecord, type ConsultationRecord } from '../../shared/records/record';
import { reduce } from '../../shared/records/reduce';
import { accept, type Result, refuse } from '../../shared/result';
import { consultationMachine } from './consultationMachine';

export type ConsultationState = SnapshotFrom<typeof consultationMachine>;

/** One consultation as its log makes it: nothing here is stored but the log. */
export interface Consultation {
  readonly id: string;
  readonly log: readonly ConsultationEvent[];
  readonly record: ConsultationRecord;
  readonly state: ConsultationState;
}

/** A consultation in which nothing has been said. */
export const beginConsultation = (id: string): Consultation => ({
  id,
  log: [],
  record: beginRecord(id),
  state: initialTransition(consultationMachine)[0],
});

/**
 * What follows from one more event, if the chart lets it happen now?
 * `transition` gives the very same state back exactly when it refuses, since every accepted edge has an action.
 */
export function advance(
  consultation: Consultation,
  event: ConsultationEvent,
): Result<Consultation, 'notNow'> {
  const [state] = transition(consultationMachine, consultation.state, event);
  if (state === consultation.state) return refuse('notNow');
  return accept({
    id: consultation.id,
    log: [...consultation.log, event],
    record: reduce(consultation.record, event),
    state,
  });
}
