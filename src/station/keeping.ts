import { isFromLater } from '../../shared/records/backupFile';
import type { ClosedRecord } from '../../shared/records/closedRecord';
import { isPastKeeping } from '../../shared/records/keptFor';
import type { SkinTest } from '../../shared/records/skinTest/skinTest';
import { formTicketKey } from '../../shared/records/ticket';
import { msPerDay } from '../../shared/units/time';
import { inheritsStop } from './inheritsStop';
import type { StationState } from './stationState';
import type { Unjudged } from './unjudged';

type Known = Pick<StationState, 'open' | 'closed' | 'skinTests' | 'settings' | 'unjudged'>;

/** Closed records and skin tests, oldest first. */
export interface Kept {
  readonly closed: readonly ClosedRecord[];
  readonly skinTests: readonly SkinTest[];
}

/** The same, and what came from other stations and nobody here can judge. */
export interface KeptOfHer extends Kept {
  readonly unjudged: readonly Unjudged[];
}

/** What has been kept for as long as the owner said, and why some of it is not to be erased without being asked for. */
export interface PastKeeping extends Kept {
  /** A stop or a reaction that stands: so many. */
  readonly stopsStanding: number;
  /** Somebody of that ticket is open: so many. */
  readonly open: number;
}

/** Everything that is known under this ticket, however it is typed; nothing under an empty one. */
export function listOfTicket(
  { closed, skinTests, unjudged = [] }: Pick<Known, 'closed' | 'skinTests' | 'unjudged'>,
  ticket: string,
): KeptOfHer {
  const key = formTicketKey(ticket);
  const isHers = (each: { readonly ticketKey: string }): boolean => key !== '' && each.ticketKey === key;
  return {
    closed: closed.filter(isHers),
    skinTests: skinTests.filter(isHers),
    unjudged: unjudged.filter(isHers),
  };
}

/** Is somebody of this ticket open, parked too? */
export const isTicketOpen = ({ open }: Pick<Known, 'open'>, ticketKey: string): boolean =>
  [...open.values()].some(({ record }) => formTicketKey(record.ticket) === ticketKey);

/** Does this skin test stop her for good? */
export const isTestStop = ({ seen, takenBack }: SkinTest): boolean =>
  seen === 'reaction' && takenBack === null;

/** Does this record hold a stop of its ticket that nobody has taken back, then or later? */
export const isStopStanding = (
  known: Known,
  { hasStandingStop, ticketKey }: Pick<ClosedRecord, 'hasStandingStop' | 'ticketKey'>,
): boolean => hasStandingStop && inheritsStop(known, ticketKey);

/**
 * Which closed records and skin tests are past the time they are kept for? Neither what belongs to somebody who is open,
 * nor what protects her: a stop that stands is erased only where somebody asks for it.
 * Checked in tests/src/station/keeping.test.ts.
 */
export function listPastKeeping(known: Known, nowMs: number): PastKeeping {
  const { keepMonths } = known.settings.settings;
  const { closed: all, unjudged = [] } = known;
  const isPast = ({ endedAtMs }: ClosedRecord): boolean => isPastKeeping(endedAtMs, keepMonths, nowMs);
  const closed = all.filter(isPast);
  const skinTests = known.skinTests.filter(({ newestAtMs }) => isPastKeeping(newestAtMs, keepMonths, nowMs));
  const isFree = (each: { readonly ticketKey: string }): boolean => !isTicketOpen(known, each.ticketKey);
  /** An erasing goes by the record's id: none whose other account stops her, is not past its time or cannot be judged. */
  const apart = new Set([
    ...all.filter((each) => !isPast(each) || isStopStanding(known, each)).map(({ id }) => id),
    ...unjudged.map(({ id }) => id),
  ]);
  const stops = [
    ...closed.filter((each) => isFree(each) && isStopStanding(known, each)),
    ...skinTests.filter((each) => isFree(each) && isTestStop(each)),
  ];
  return {
    closed: closed.filter((each) => isFree(each) && !apart.has(each.id)),
    skinTests: skinTests.filter((each) => isFree(each) && !isTestStop(each) && !apart.has(each.id)),
    stopsStanding: stops.length,
    open: [...closed, ...skinTests].filter((each) => !isFree(each)).length,
  };
}

/**
 * After so many days without an entry nothing is erased by itself: the clock may be wrong, and it is offered instead.
 * Assumed because a salon that is in use writes each day, and holidays are shorter.
 */
export const ASSUMED_QUIET_DAYS = 31;

/** Was this station in use until now, by its own records, so that what its clock says of years may be believed? */
export const isInUse = ({ closed, skinTests, open }: Known, nowMs: number): boolean =>
  [
    ...closed.flatMap(({ endedAtMs, broughtIn }) => (broughtIn === undefined ? [endedAtMs] : [])),
    ...skinTests.map(({ newestAtMs }) => newestAtMs),
    ...[...open.values()].map(({ record }) => record.newestAtMs),
  ].some((atMs) => !isFromLater({ madeAtMs: atMs }, nowMs) && nowMs - atMs <= ASSUMED_QUIET_DAYS * msPerDay);
