import { type BackupLogs, isFromLater, readBackup } from '../../shared/records/backupFile';
import { type ClosedRecord, parseClosedRecord } from '../../shared/records/closedRecord';
import { accept, type Result, refuse } from '../../shared/result';
import type { Json } from '../storage/json';
import { isLogName } from '../storage/logName';
import type { Logs } from '../storage/watcherChannel';
import { SETTINGS_LOG } from './readLogs';
import type { SubmitRefusal } from './submitRefusal';

/** What a file brought: so many closed records, and everything beside them. */
export interface BroughtIn {
  readonly closed: number;
}

/** One thing to be written, in this order: an entry to the end of a log, or a log that makes room first. */
type Writing =
  | { readonly do: 'append'; readonly log: string; readonly entry: Json }
  | { readonly do: 'clear'; readonly log: string };

interface BringIn extends BroughtIn {
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
  const months = [...logs].filter(([name]) => name.startsWith('closed-'));
  const records = months.flatMap(([, entries]) => entries.map(parseClosedRecord));
  return records.every((record) => record !== null) ? records : null;
};

/**
 * What is to be written so that this backup comes in? The whole of it, onto a station that holds nothing else: a stop or a
 * reaction told at one of two stations must not be lost at the other, so beside clients nothing comes.
 * Checked in tests/src/station/bringIn.test.ts.
 */
export function planBringIn(
  ours: Logs,
  file: string,
  isDemo: boolean,
  nowMs: number,
): Result<BringIn, SubmitRefusal> {
  const read = readBackup(file);
  if (!read.ok) return refuse({ kind: 'backup', why: read.error });
  const { logs, made } = read.value;
  if (made.isDemo !== isDemo) return refuse({ kind: 'backup', why: 'invented' });
  if (isFromLater(made, nowMs)) return refuse({ kind: 'backup', why: 'fromLater' });
  const theirs = listClosed(logs);
  if (theirs === null || [...logs.keys()].some((name) => !isLogName(name))) {
    return refuse({ kind: 'backup', why: 'damaged' });
  }
  if (mayMove(ours, logs)) {
    return accept({ closed: theirs.length, writings: planMove(ours, logs) });
  }
  return refuse({ kind: 'backup', why: 'notEmpty' });
}
