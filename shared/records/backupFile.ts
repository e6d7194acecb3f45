import crc32 from 'crc-32';
import * as v from 'valibot';
import { accept, type Result, refuse } from '../result';
import { msPerDay } from '../units/time';
import { MODEL_VERSION } from './event';
import { isOfPractice } from './practiceId';

/** Raised with a migration whenever the file changes its shape. */
export const BACKUP_VERSION = 1;

/** Every log of a station by name, each entry as it was written. */
export type BackupLogs = ReadonlyMap<string, readonly unknown[]>;

/** When it was made, in ms since 1970-01-01 UTC, and whether of the invented salon. */
export interface Made {
  readonly madeAtMs: number;
  readonly isDemo: boolean;
}

const headSchema = v.object({
  strandproof: v.literal('backup'),
  v: v.pipe(v.number(), v.integer(), v.minValue(1)),
  modelVersion: v.pipe(v.number(), v.integer(), v.minValue(1)),
  madeAtMs: v.pipe(v.number(), v.safeInteger()),
  isDemo: v.boolean(),
});
const lineSchema = v.strictObject({ log: v.pipe(v.string(), v.minLength(1)), entry: v.unknown() });
const END = 'end';

/** Check sum over all lines before the last, each with its newline: CRC-32 in UTF-8, 8 hex digits. */
const sumUp = (checksum: number, text: string): number => crc32.str(text, checksum);
const writeSum = (checksum: number): string => (checksum >>> 0).toString(16).padStart(8, '0');

/**
 * The whole station as one text file, line by line: what it is, every entry of every log in its order, and how many
 * lines there were with a check sum over them. Nothing of practice is in it. Checked in tests/shared/records/backupFile.test.ts.
 */
export function* writeBackup(logs: BackupLogs, made: Made): Generator<string, void> {
  let checksum = 0;
  let count = 0;
  const line = (content: unknown): string => {
    const text = `${JSON.stringify(content)}\n`;
    checksum = sumUp(checksum, text);
    count += 1;
    return text;
  };
  yield line({ strandproof: 'backup', v: BACKUP_VERSION, modelVersion: MODEL_VERSION, ...made });
  for (const [log, entries] of logs) {
    if (isOfPractice(log, entries)) continue;
    for (const entry of entries) yield line({ log, entry });
  }
  yield `${END} ${count} ${writeSum(checksum)}\n`;
}

/**
 * So much later than this tablet's clock a backup may be made. Assumed because two tablets of one salon, their zones set
 * wrongly too, are less than a day apart; more is a clock that is wrong, and every wait of a skin test would be with it.
 */
export const ASSUMED_CLOCKS_APART_MS = msPerDay;

/** Was it made so long after now, ms, that one of the two clocks is wrong? Up to and including a day it is not. */
export const isFromLater = ({ madeAtMs }: Pick<Made, 'madeAtMs'>, nowMs: number): boolean =>
  madeAtMs - nowMs > ASSUMED_CLOCKS_APART_MS;

/**
 * Why a file is not brought in; nothing of it was used. `notRead`: it is gone, or this page may not read it.
 * `erasesOpen`: somebody is open here of whom it erases something.
 * `fromLater`: made more than a day after what this tablet's clock says. `invented`: of the invented salon where this one is not, or the other way round.
 * `practice`: something of practice is in it, which nobody was treated for.
 */
export type BackupRefusal =
  | 'notRead'
  | 'erasesOpen'
  | 'invented'
  | 'practice'
  | 'fromLater'
  | 'anotherProgram'
  | 'cutOff'
  | 'damaged'
  | 'newer';

/** A line as JSON; undefined where it is none. */
function parseLine(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

/**
 * What logs does this backup hold, and from when is it? All of it or nothing: a file that ends too early, of which a
 * single letter was changed, of a newer edition or of another program is refused by name.
 */
export function readBackup(
  file: string,
): Result<{ readonly logs: BackupLogs; readonly made: Made }, BackupRefusal> {
  const [first = ''] = file.split('\n', 1);
  const head = v.safeParse(headSchema, parseLine(first));
  if (!head.success) return refuse('anotherProgram');
  if (head.output.v > BACKUP_VERSION || head.output.modelVersion > MODEL_VERSION) return refuse('newer');
  const endFrom = file.lastIndexOf(`\n${END} `) + 1;
  const said = /^end ([0-9]+) ([0-9a-f]{8})\n$/.exec(file.slice(endFrom));
  if (endFrom === 0 || said === null) return refuse('cutOff');
  const body = file.slice(0, endFrom);
  const lines = body.split('\n').slice(0, -1);
  if (said[1] !== String(lines.length) || said[2] !== writeSum(sumUp(0, body))) return refuse('damaged');
  const logs = new Map<string, unknown[]>();
  for (const text of lines.slice(1)) {
    const line = v.safeParse(lineSchema, parseLine(text));
    if (!line.success) return refuse('damaged');
    const { log, entry } = line.output;
    const entries = logs.get(log);
    if (entries === undefined) logs.set(log, [entry]);
    else entries.push(entry);
  }
  if ([...logs].some(([log, entries]) => isOfPractice(log, entries))) return refuse('practice');
  const { madeAtMs, isDemo } = head.output;
  return accept({ logs, made: { madeAtMs, isDemo } });
}
