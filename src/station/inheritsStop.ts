import { type ClosedRecord, parseClosedLog } from '../../shared/records/closedRecord';
import { digest } from '../../shared/records/documents/canonical';
import { ASSUMED_STOPS_SPOKEN_FOR } from '../../shared/records/forms/course';
import type { ConsultationRecord, SpokenFor } from '../../shared/records/record';
import { fold } from '../../shared/records/reduce';
import { hasStandingStop } from '../../shared/records/standingStop';
import { formTicketKey } from '../../shared/records/ticket';
import { listToldStops, type ToldStop } from '../../shared/records/toldStops';
import type { StationState } from './stationState';

type Known = Pick<StationState, 'open' | 'closed' | 'unjudged'>;

/** From this model on a correction says which stops it lifts. */
const SPEAKS_BY_NAME = 6;

/** Everything else that is known of the same ticket, in the order in which the station holds it. */
const listSame = ({ open, closed, unjudged = [] }: Known, ticket: string, except?: string) => {
  const key = formTicketKey(ticket);
  return {
    closed: closed.filter(({ ticketKey }) => ticketKey === key),
    open: [...open.values()]
      .filter(({ id, record }) => id !== except && formTicketKey(record.ticket) === key)
      .map(({ id, log }) => ({ id, stops: listToldStops(id, log), closed: null })),
    unjudged: unjudged.filter(({ ticketKey }) => ticketKey === key),
  };
};

/** What the named corrections of this record lift; a log that cannot be read lifts nothing. */
function readCorrections(closed: ClosedRecord) {
  const log = closed.hasClearedStop ? (parseClosedLog(closed) ?? []) : [];
  const corrected = log.flatMap((event) =>
    event.type === 'CORRECTED' && event.payload.answer === 'inherited' ? [event] : [],
  );
  return {
    named: corrected.flatMap(({ payload }) => payload.speaksFor ?? []),
    /** Of a model that did not say which: it speaks for what closed before it, where both were closed here. */
    isUnnamed: corrected.some(({ modelVersion }) => modelVersion < SPEAKS_BY_NAME),
  };
}

/** Of a log that nobody here can read, known by its digest, it stops her that something there may stand. */
const unread = (text: string): readonly ToldStop[] => [{ stop: 'unread', entry: text }];

/** The stops that stand in a closed record, each as it was told. */
function listStopsOf(closed: ClosedRecord): readonly ToldStop[] {
  const log = parseClosedLog(closed);
  const stops = log === null ? [] : listToldStops(closed.id, log);
  return stops.length > 0 ? stops : unread(digest(closed.log));
}

const isNamed = (spokenFor: readonly SpokenFor[], { id, stops }: Standing): boolean =>
  stops.every((each) =>
    spokenFor.some(({ record, stop, entry }) => record === id && stop === each.stop && entry === each.entry),
  );

/** A record with stops that stand, as they were told; `closed`: as it is kept, where it is over. */
interface Standing {
  readonly id: string;
  readonly stops: readonly ToldStop[];
  readonly closed: ClosedRecord | null;
}

/**
 * Which records hold a stop that nobody lifted? A named correction lifts the stops it names and no others, wherever
 * it was made and whenever it comes in: so this hangs on which records there are, and never on the order they came in. One of
 * a model before 6 names none: it lifts what was closed before it at the same station, and nothing that came in from another.
 */
function listUncleared({ open, closed, unjudged }: ReturnType<typeof listSame>): readonly Standing[] {
  const corrections = closed.map(readCorrections);
  const named = corrections.flatMap((each) => each.named);
  const isBefore = (stopped: ClosedRecord, index: number): boolean =>
    stopped.broughtIn === undefined &&
    corrections.some(({ isUnnamed }, at) => isUnnamed && at > index && closed[at]?.broughtIn === undefined);
  const standing: readonly Standing[] = [
    ...closed
      .filter((each, index) => each.hasStandingStop && !isBefore(each, index))
      .map((each) => ({ id: each.id, stops: listStopsOf(each), closed: each })),
    ...open.filter(({ stops }) => stops.length > 0),
    ...unjudged.map(({ id, text }) => ({ id, stops: unread(text), closed: null })),
  ];
  return standing.filter((each) => !isNamed(named, each));
}

/** Was the client with this ticket stopped before, open or closed, by an answer that nobody corrected since? */
export const inheritsStop = (known: Known, ticket: string): boolean =>
  listUncleared(listSame(known, ticket)).length > 0;

/**
 * For which stops does a correction of this consultation speak that is made now? For all that stand under its ticket, each by
 * its record, kind and the entry that told it; where there are more than can be written down, the others go on standing.
 */
export const listSpokenFor = (
  known: Known,
  { id, ticket }: Pick<ConsultationRecord, 'id' | 'ticket'>,
): readonly SpokenFor[] =>
  listUncleared(listSame(known, ticket, id))
    .flatMap((each) => each.stops.map((told) => ({ record: each.id, ...told })))
    .slice(0, ASSUMED_STOPS_SPOKEN_FOR);

/** Did this closed record stop her already, here, when a correction was made that names nothing? */
function stoodThen(closed: ClosedRecord | null, correctedAtMs: number): boolean {
  if (closed === null || closed.broughtIn !== undefined) return false;
  const log = parseClosedLog(closed)?.filter(({ atMs }) => atMs <= correctedAtMs) ?? [];
  return hasStandingStop(fold(closed.id, log));
}

/**
 * Was the same ticket stopped in another consultation while this one was open, and nobody said so here?
 * A named correction of the stop handed on speaks for what stood when it was made, never for what came later; one of a model
 * before 6, which names nothing, for what stood in the records closed here.
 * Checked in tests/src/station/inheritsStop.test.ts.
 */
export function isStoppedElsewhere(known: Known, { id, ticket, corrections }: ConsultationRecord): boolean {
  const named = corrections.flatMap(({ speaksFor }) => speaksFor ?? []);
  const unnamed = corrections.findLast(
    ({ answer, speaksFor }) => answer === 'inherited' && speaksFor === undefined,
  );
  return listUncleared(listSame(known, ticket, id)).some(
    (each) => !isNamed(named, each) && !(unnamed !== undefined && stoodThen(each.closed, unnamed.atMs)),
  );
}
