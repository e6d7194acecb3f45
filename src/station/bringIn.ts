import { type BackupLogs, isFromLater, readBackup } from '../../shared/records/backupFile';
import { type ClosedRecord, parseClosedRecord } from '../../shared/records/closedRecord';
import type { RecordDocument } from '../../shared/records/documents/document';
import { listDocuments } from '../../shared/records/documents/listDocuments';
import { takeTold } from '../../shared/records/tombstone';
import { accept, type Result, refuse } from '../../shared/result';
import type { Json } from '../storage/json';
import { isLogName } from '../storage/logName';
import type { Logs } from '../storage/watcherChannel';
import { leaveOutErased, listErased, listNewErasings } from './erased';
import { findTicket } from './findTicket';
import { isTicketOpen } from './keeping';
import { CLOSED, ERASED_LOG, OPEN, readLogId, SETTINGS_LOG, UNJUDGED_LOG } from './logNames';
import { isBeginningOf, type Judged, listHeld } from './merging';
import { findSettingsIn } from './readLogs';
import type { StationState } from './stationState';
import type { SubmitRefusal } from './submitRefusal';

/** What a file brought: so many closed records, and everything beside them. */
export interface BroughtIn {
  readonly closed: number;
  /** So many records and skin tests went here because they were erased there. */
  readonly gone: number;
  /** What else is to be said of it where clients are here; null where the whole station moved. */
  readonly beside: Beside | null;
}

/** Of a backup beside clients. */
export interface Beside extends Pick<Judged, 'here' | 'toldTwice'> {
  /** So many skin tests came, or went on. */
  readonly tests: number;
  /** By ticket. They stay where they are: two tablets would go on with one client. */
  readonly open: readonly string[];
}

/** One thing to be written, in this order: an entry to the end of a log, or a log that makes room first. */
type Writing =
  | { readonly do: 'append'; readonly log: string; readonly entry: Json }
  | { readonly do: 'clear'; readonly log: string };

interface BringIn extends Pick<BroughtIn, 'gone'> {
  /** Written before anything else. */
  readonly tombstones: readonly Json[];
  /** The whole of it, where nothing else is here; else what the other station tells, to be judged one by one. */
  readonly comes:
    | { readonly closed: number; readonly writings: readonly Writing[] }
    | {
        readonly documents: Iterable<RecordDocument>;
        readonly erased: ReadonlySet<string>;
        readonly open: readonly string[];
        /** What that station could not judge, as it lies there. */
        readonly unjudged: readonly Json[];
      };
}

/** Both copies hold plain JSON: so is whatever was read of a file as JSON. */
const toJson = (entry: unknown): Json => entry as Json;

const isSame = (one: unknown, other: unknown): boolean => JSON.stringify(one) === JSON.stringify(other);

/** Is all that this log holds the beginning of what the file has of it? */
const isBeginning = (ours: readonly Json[], theirs: readonly unknown[]): boolean =>
  ours.length <= theirs.length && ours.every((entry, index) => isSame(entry, theirs[index]));

/**
 * May the whole file come in? Where nothing is here that is not in it: a station without a client, whose settings give
 * way, or one whose power went while the same file was coming in. `before`: what is here by this station's own word; what
 * the other house erased may be all the clients there are.
 */
function mayMove(before: Logs, ours: Logs, theirs: BackupLogs): boolean {
  const hasSettingsAlone = [...before.keys()].every((name) => name === SETTINGS_LOG);
  return (
    hasSettingsAlone || [...ours].every(([name, entries]) => isBeginning(entries, theirs.get(name) ?? []))
  );
}

/** Settings come first, since events name the edition they were judged under. */
function planMove(ours: Logs, theirs: BackupLogs): readonly Writing[] {
  const inOrder = [...theirs].sort(
    ([one], [other]) => Number(other === SETTINGS_LOG) - Number(one === SETTINGS_LOG),
  );
  return inOrder.flatMap(([log, entries]): readonly Writing[] => {
    const held = ours.get(log) ?? [];
    const isKept = isBeginning(held, entries);
    const rest = entries.slice(isKept ? held.length : 0);
    const writings = rest.map((entry): Writing => ({ do: 'append', log, entry: toJson(entry) }));
    return isKept ? writings : [{ do: 'clear', log }, ...writings];
  });
}

const listClosed = (logs: BackupLogs): readonly ClosedRecord[] | null => {
  const months = [...logs].filter(([name]) => name.startsWith(CLOSED));
  const records = months.flatMap(([, entries]) => entries.map(parseClosedRecord));
  return records.every((record) => record !== null) ? records : null;
};

/** Everything but the tombstones themselves, which are no matter of which log is the longer one. */
function withoutTombstones<Entry>(logs: ReadonlyMap<string, readonly Entry[]>, erased: ReadonlySet<string>) {
  const left = new Map(leaveOutErased(logs, erased));
  left.delete(ERASED_LOG);
  return left;
}

/** Closed records, and whatever has a log of its own. */
const countRecords = (logs: BackupLogs): number =>
  [...logs].reduce((count, [name, entries]) => {
    if (name.startsWith(CLOSED) || name === UNJUDGED_LOG) return count + entries.length;
    return name === SETTINGS_LOG ? count : count + 1;
  }, 0);

/** Does the file take away what is open here, or of a ticket that is? Colour may be on her. */
export const erasesOpen = (
  { open, closed, skinTests, unjudged = [] }: BringInto['state'],
  erased: ReadonlySet<string>,
): boolean =>
  [...open.keys()].some((id) => erased.has(id)) ||
  [...closed, ...skinTests, ...unjudged].some(
    ({ id, ticketKey }) => erased.has(id) && isTicketOpen({ open }, ticketKey),
  );

/** The station it comes into. */
interface BringInto {
  readonly isDemo: boolean;
  readonly nowMs: number;
  readonly state: Pick<StationState, 'open' | 'closed' | 'skinTests' | 'unjudged'>;
}

/** Who is open in the file, by ticket, but for those whose log is known here, gone on with since or not. */
function listOpen(
  theirs: BackupLogs,
  { open, closed }: Pick<StationState, 'open' | 'closed'>,
): readonly string[] {
  const isKnown = (id: string, log: readonly unknown[]): boolean => {
    const ours = closed.filter((each) => each.id === id).map((each) => each.log);
    return [...ours, open.get(id)?.log ?? []].some((each) => isBeginningOf(log, each));
  };
  return [...theirs].flatMap(([name, log]) => {
    const id = readLogId(name);
    return name.startsWith(OPEN) && !isKnown(id, log) ? [findTicket(log) ?? id] : [];
  });
}

/**
 * What is to be written so that this backup comes in? The whole of it, onto a station that holds nothing else. Beside clients
 * what closed there and the skin tests come, each judged anew; who is open there stays there, and the settings are this
 * station's own. What was erased, here or there, is left out as if it had never been; and what was erased there is erased here, but
 * for what was only too old for another house.
 * Checked in tests/src/station/bringIn.test.ts and merging.test.ts.
 */
export function planBringIn(
  ours: Logs,
  file: string,
  { isDemo, nowMs, state }: BringInto,
): Result<BringIn, SubmitRefusal> {
  const read = readBackup(file);
  if (!read.ok) return refuse({ kind: 'backup', why: read.error });
  const { logs, made } = read.value;
  if (made.isDemo !== isDemo) return refuse({ kind: 'backup', why: 'invented' });
  if (isFromLater(made, nowMs)) return refuse({ kind: 'backup', why: 'fromLater' });
  const closed = listClosed(logs);
  if (closed === null || [...logs.keys()].some((name) => !isLogName(name))) {
    return refuse({ kind: 'backup', why: 'damaged' });
  }
  const everywhere = new Set([...listErased(ours), ...listErased(logs)]);
  const there = withoutTombstones(logs, everywhere);
  const isMove = mayMove(
    withoutTombstones(ours, listErased(ours)),
    withoutTombstones(ours, everywhere),
    there,
  );
  const told = logs.get(ERASED_LOG) ?? [];
  // A station that moves is the house that erased; of another house what was too old there is kept for as long as here.
  const takes = isMove ? told : told.map(takeTold);
  const erased = new Set([...listErased(ours), ...listErased(new Map([[ERASED_LOG, takes]]))]);
  if (erasesOpen(state, erased)) return refuse({ kind: 'backup', why: 'erasesOpen' });
  const tombstones = listNewErasings(ours.get(ERASED_LOG) ?? [], takes);
  const left = withoutTombstones(ours, erased);
  const gone = countRecords(withoutTombstones(ours, new Set())) - countRecords(left);
  if (isMove) {
    const comes = { closed: listClosed(there)?.length ?? 0, writings: planMove(left, there) };
    return accept({ gone, tombstones, comes });
  }
  const documents = listDocuments(listHeld(there as Logs), findSettingsIn(logs as Logs));
  const unjudged = (there.get(UNJUDGED_LOG) ?? []).map(toJson);
  return accept({ gone, tombstones, comes: { documents, erased, open: listOpen(there, state), unjudged } });
}
