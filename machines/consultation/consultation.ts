import { initialTransition, type SnapshotFrom, transition } from 'xstate';
import type { ConsultationEvent } from '../../shared/records/event';
import { findGateBreach, type GateBreach } from '../../shared/records/gateBreach';
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

/** The chart says not now; or the record itself finds a bowl without what the gate asks for. */
export type AdvanceRefusal = 'notNow' | GateBreach;

/**
 * What follows from one more event, if chart and record let it happen now?
 * `transition` gives the very same state back exactly when it refuses, since every accepted edge has an action.
 */
export function advance(
  consultation: Consultation,
  event: ConsultationEvent,
): Result<Consultation, AdvanceRefusal> {
  const [state] = transition(consultationMachine, consultation.state, event);
  if (state === consultation.state) return refuse('notNow');
  const record = reduce(consultation.record, event);
  const breach = findGateBreach(record);
  if (breach !== null) return refuse(breach);
  return accept({ id: consultation.id, log: [...consultation.log, event], record, state });
}
