import type { Consultation } from '../../machines/consultation/consultation';
import { type ClosedRecord, parseClosedLog } from '../../shared/records/closedRecord';
import type { ConsultationRecord } from '../../shared/records/record';
import { fold } from '../../shared/records/reduce';
import { hasStandingStop } from '../../shared/records/standingStop';
import { formTicketKey } from '../../shared/records/ticket';
import type { StationState } from './stationState';

type Known = Pick<StationState, 'open' | 'closed'>;

/** Everything else that is known of the same ticket, oldest first. */
const listSame = ({ open, closed }: Known, ticket: string, except?: string) => {
  const key = formTicketKey(ticket);
  return {
    closed: closed.filter(({ ticketKey }) => ticketKey === key),
    open: [...open.values()].filter(
      ({ id, record }) => id !== except && formTicketKey(record.ticket) === key,
    ),
  };
};

/** When was she started here? A log that cannot be read says nothing of it: she knew of nothing. */
const findStartedAtMs = ({ log }: ClosedRecord): number =>
  parseClosedLog({ log: log.slice(0, 1) })?.[0]?.atMs ?? 0;

/**
 * Does the stop of this one still stand among the others? A named correction speaks for what was here when she was started:
 * for what closed before, and for what had come in from a file by then. One that was made elsewhere speaks for nothing here.
 */
const isUncleared = (stopped: ClosedRecord, index: number, closed: readonly ClosedRecord[]): boolean =>
  stopped.hasStandingStop &&
  !closed.some(
    (each, at) =>
      each.hasClearedStop &&
      each.broughtIn === undefined &&
      (stopped.broughtIn === undefined ? at > index : findStartedAtMs(each) >= stopped.broughtIn.atMs),
  );

const isAnyStopped = ({ open, closed }: ReturnType<typeof listSame>): boolean =>
  closed.some(isUncleared) || open.some(({ record }) => hasStandingStop(record));

/** Was the client with this ticket stopped before, open or closed, by an answer that nobody corrected since? */
export const inheritsStop = (known: Known, ticket: string): boolean => isAnyStopped(listSame(known, ticket));

/**
 * Was the same ticket stopped in another consultation while this one was open, and nobody said so here?
 * A named correction of the stop handed on speaks for what stood when it was made, never for what came later.
 * Checked in tests/src/station/inheritsStop.test.ts.
 */
export function isStoppedElsewhere(known: Known, { id, ticket, corrections }: ConsultationRecord): boolean {
  const corrected = corrections.findLast(({ answer }) => answer === 'inherited');
  /** A log that cannot be read speaks for nothing: its stop stands. */
  const stoodThen = (
    other: Pick<ClosedRecord, 'id' | 'log' | 'broughtIn'> | Pick<Consultation, 'id' | 'log'>,
  ): boolean => {
    const log = corrected === undefined ? null : parseClosedLog(other);
    const cameAtMs = 'broughtIn' in other ? (other.broughtIn?.atMs ?? 0) : 0;
    if (corrected === undefined || log === null || cameAtMs > corrected.atMs) return false;
    return hasStandingStop(
      fold(
        other.id,
        log.filter(({ atMs }) => atMs <= corrected.atMs),
      ),
    );
  };
  const { open, closed } = listSame(known, ticket, id);
  return isAnyStopped({
    open: open.filter((each) => !stoodThen(each)),
    closed: closed.filter((each) => !stoodThen(each)),
  });
}
