import { type BackupLogs, isFromLater, readBackup } from '../../shared/records/backupFile';
import { type ClosedRecord, parseClosedRecord } from '../../shared/records/closedRecord';
import { readErasedIds } from '../../shared/records/tombstone';
import { accept, type Result, refuse } from '../../shared/result';
import type { Json } from '../storage/json';
import { isLogName } from '../storage/logName';
import type { Logs } from '../storage/watcherChannel';
import { leaveOutErased, listErased } from './erased';
import { isTicketOpen } from './keeping';
import { CLOSED, ERASED_LOG, SETTINGS_LOG } from './logNames';
import type { StationState } from './stationState';
import type { SubmitRefusal } from './submitRefusal';

/** What a file brought: so many closed records, and everything beside them. */
export interface BroughtIn {
  readonly closed: number;
  /** So many records and skin tests went here because they were erased there. */
  readonly gone: number;
  /** Clients are here, so nothing came but what was erased there. */
  readonly isBesideClients: boolean;
}

/** One thing to be written, in this order: an entry to the end of a log, or a log that makes room first. */
type Writing =
  | { readonly do: 'append'; readonly log: string; readonly entry: Json }
  | { readonly do: 'clear'; readonly log: string };

interface BringIn extends BroughtIn {
  /** Written before anything else. */
  readonly tombstones: readonly Json[];
  readonly writings: readonly Writing[];
}

/** Both copies hold plain JSON: so is whatever was read of a file as JSON. */
const toJson = (entry: unknown): Json => entry as Json;

const isSame = (one: unknown, other: unknown): boolean => JSON.stringify(one) === JSON.stringify(other);

/** Is all that this log holds the beginning of what the file has of it? */
const isBeginning = (ours: readonly Json[], theirs: readonly unknown[]): boolean =>
  ours.length <= theirs.length && ours.every((entry, index) => isSame(entry, theirs[index]));

/**
 * May the whole file come in? Where nothing is here that is not in it: a station without a client, whose settings give
 * way, or one whose power went while the same file was coming in.
 */
function mayMove(ours: Logs, theirs: BackupLogs): boolean {
  const hasSettingsAlone = [...ours.keys()].every((name) => name === SETTINGS_LOG);
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

/** What of the file's tombstones is not known here yet, so that it is written down before anything else. */
function listNewTombstones(ours: Logs, theirs: BackupLogs): readonly Json[] {
  const known = listErased(ours);
  const fresh = (theirs.get(ERASED_LOG) ?? []).filter(
    (entry) => readErasedIds(entry)?.some((id) => !known.has(id)) === true,
  );
  return fresh.map(toJson);
}

/** Everything but the tombstones themselves, which are no matter of which log is the longer one. */
function withoutTombstones<Entry>(logs: ReadonlyMap<string, readonly Entry[]>, erased: ReadonlySet<string>) {
  const left = new Map(leaveOutErased(logs, erased));
  left.delete(ERASED_LOG);
  return left;
}

/** Closed records, and whatever has a log of its own. */
const countRecords = (logs: BackupLogs): number =>
  [...logs].reduce((count, [name, entries]) => {
    if (name.startsWith(CLOSED)) return count + entries.length;
    return name === SETTINGS_LOG ? count : count + 1;
  }, 0);

/** Does the file take away what is open here, or of a ticket that is? Colour may be on her. */
const erasesOpen = ({ open, closed, skinTests }: BringInto['state'], erased: ReadonlySet<string>): boolean =>
  [...open.keys()].some((id) => erased.has(id)) ||
  [...closed, ...skinTests].some(({ id, ticketKey }) => erased.has(id) && isTicketOpen({ open }, ticketKey));

/** The station it comes into. */
interface BringInto {
  readonly isDemo: boolean;
  readonly nowMs: number;
  readonly state: Pick<StationState, 'open' | 'closed' | 'skinTests'>;
}

/**
 * What is to be written so that this backup comes in? The whole of it, onto a station that holds nothing else: a stop or a
 * reaction told at one of two stations must not be lost at the other, so beside clients nothing comes. What was erased, here
 * or there, is left out as if it had never been; and what was erased there is erased here even where nothing else comes.
 * Checked in tests/src/station/bringIn.test.ts.
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
  if (listClosed(logs) === null || [...logs.keys()].some((name) => !isLogName(name))) {
    return refuse({ kind: 'backup', why: 'damaged' });
  }
  const erased = new Set([...listErased(ours), ...listErased(logs)]);
  if (erasesOpen(state, erased)) return refuse({ kind: 'backup', why: 'erasesOpen' });
  const tombstones = listNewTombstones(ours, logs);
  const here = withoutTombstones(ours, erased);
  const there = withoutTombstones(logs, erased);
  const gone = countRecords(withoutTombstones(ours, new Set())) - countRecords(here);
  if (mayMove(here, there)) {
    const closed = listClosed(there)?.length ?? 0;
    return accept({ closed, gone, isBesideClients: false, tombstones, writings: planMove(here, there) });
  }
  return tombstones.length > 0
    ? accept({ closed: 0, gone, isBesideClients: true, tombstones, writings: [] })
    : refuse({ kind: 'backup', why: 'notEmpty' });
}
