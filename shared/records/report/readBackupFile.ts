import * as v from 'valibot';
import { accept, type Result, refuse } from '../../result';
import { type BackupLogs, readBackup } from '../backupFile';
import { parseClosedRecord } from '../closedRecord';
import { findCarried } from '../json/carriedSettings';
import { defaultSettings, type Settings, settingsSchema } from '../settings';
import { readErasedIds } from '../tombstone';
import { parseJson } from './readEntry';
import type { FileRefusal, Place, ReportFile, ToldVisit } from './reportFile';

/** How the logs of a station are named in its backup; those of skin tests are not asked. */
export const logsOf = { settings: 'settings', erased: 'erased', open: 'open-', closed: 'closed-' } as const;

const editionSchema = v.object({ settings: settingsSchema });
type Find = (settingsId: number) => Settings;

/** An edition that is lost, or is none, stands as the newest one before it. */
function listEditions(entries: readonly unknown[]): readonly Settings[] {
  const editions: Settings[] = [];
  for (const entry of entries) {
    const read = v.safeParse(editionSchema, entry);
    editions.push(read.success ? read.output.settings : (editions.at(-1) ?? defaultSettings));
  }
  return editions;
}

const readLogName = (line: string): unknown =>
  parseJson(/^\{"log":("(?:[^"\\]|\\.)*")/.exec(line)?.[1] ?? '');

/** On which line of the file stands each entry of each log, from 1? */
function findLines(text: string): ReadonlyMap<unknown, readonly number[]> {
  const lines = new Map<unknown, number[]>();
  for (const [index, line] of text.split('\n').entries()) {
    const name = readLogName(line);
    const known = lines.get(name);
    if (known === undefined) lines.set(name, [index + 1]);
    else known.push(index + 1);
  }
  return lines;
}

/** Where does it end, or which line is none? null where each line reads well and only the check sum tells of a change. */
function findPlace(text: string, why: FileRefusal['why']): Place | null {
  const lines = text.trimEnd().split('\n');
  if (why === 'cutOff') return { line: lines.length };
  const at = lines.findIndex(
    (line, index) => index > 0 && !line.startsWith('end ') && parseJson(line) === undefined,
  );
  return why === 'damaged' && at !== -1 ? { line: at + 1 } : null;
}

interface Told {
  readonly visits: ToldVisit[];
  readonly notUnderstood: Place[];
}

function tellVisits(logs: BackupLogs, text: string, find: Find, madeAtMs: number): Told {
  const told: Told = { visits: [], notUnderstood: [] };
  const lines = findLines(text);
  for (const [name, entries] of logs) {
    const placeOf = (index: number): Place => ({ line: lines.get(name)?.[index] ?? 0 });
    if (name.startsWith(logsOf.open)) {
      const id = name.slice(logsOf.open.length);
      told.visits.push({ id, log: entries, place: placeOf(0), find, isClosed: false, madeAtMs });
    }
    if (!name.startsWith(logsOf.closed)) continue;
    for (const [index, entry] of entries.entries()) {
      const closed = parseClosedRecord(entry);
      const place = placeOf(index);
      if (closed === null) told.notUnderstood.push(place);
      else {
        const { id, log, broughtIn } = closed;
        const findThere: Find = (settingsId) =>
          findCarried(broughtIn?.settings ?? [], settingsId) ?? defaultSettings;
        const found = broughtIn === undefined ? find : findThere;
        told.visits.push({ id, log, place, find: found, isClosed: true, madeAtMs });
      }
    }
  }
  return told;
}

/**
 * What consultations does this backup of a whole station tell? Open and closed ones; what was erased is named.
 * Checked in tests/shared/records/report/readReportFile.test.ts.
 */
export function readBackupFile(text: string): Result<ReportFile, FileRefusal> {
  const read = readBackup(text);
  if (!read.ok) {
    const why =
      read.error === 'cutOff' || read.error === 'damaged' || read.error === 'newer'
        ? read.error
        : 'anotherProgram';
    return refuse({ why, place: findPlace(text, why) });
  }
  const { logs, made } = read.value;
  const editions = listEditions(logs.get(logsOf.settings) ?? []);
  const find: Find = (settingsId) => editions[settingsId] ?? editions.at(-1) ?? defaultSettings;
  return accept({
    ...made,
    ...tellVisits(logs, text, find, made.madeAtMs),
    kind: 'backup',
    offsetMin: null,
    erased: (logs.get(logsOf.erased) ?? []).flatMap((entry) => readErasedIds(entry) ?? []),
    unread: 0,
    mayName: find(Number.POSITIVE_INFINITY).figuresByStylist,
  });
}
