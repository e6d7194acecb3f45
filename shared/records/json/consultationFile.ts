import crc32 from 'crc-32';
import * as v from 'valibot';
import { accept, type Result, refuse } from '../../result';
import type { Made } from '../backupFile';
import { MODEL_VERSION } from '../event';
import { isPracticeId } from '../practiceId';
import type { ConsultationRecord } from '../record';
import { columnNames } from '../table/columns';
import { type CarriedEdition, findCarried } from './carriedSettings';
import { fileSchemaOf, headSchema, toldSchemaOf } from './fileSchema';

/** Raised with a migration whenever the file changes its shape, or the settings in it do. Since 2 they say whether figures may name people. */
export const CONSULTATIONS_VERSION = 2;

/** One consultation as it leaves the house: what people did, what that came to, and the house rules it was judged under. */
export interface LeavingConsultation {
  readonly record: ConsultationRecord;
  /** As it was written, for ever. */
  readonly log: readonly { readonly atMs: number }[];
  readonly settings: readonly CarriedEdition[];
}

/** What else stands in a file: when it was made, in ms since 1970-01-01 UTC; of which days, YYYY-MM-DD on the wall. */
export interface FileHead {
  readonly madeAtMs: number;
  /** Of the invented salon. */
  readonly isDemo: boolean;
  readonly from: string;
  readonly to: string;
  /** For whoever reads it, never read back: skin tests of these days, and records this station cannot read any more. */
  readonly skinTests: readonly object[];
  readonly unread: readonly object[];
}

/** One consultation as a file tells it: nothing of it is believed before its log was judged anew. */
export interface ToldConsultation {
  readonly id: string;
  readonly settings: readonly CarriedEdition[];
  readonly log: readonly unknown[];
}

/** The sign a decoder puts where it could not read is written as its number, so that only a wrong encoding shows it. */
const UNREADABLE = '\ufffd';
const toJson = (value: unknown): string => JSON.stringify(value).replaceAll(UNREADABLE, '\\ufffd');

/** CRC-32 over a consultation as JSON, 8 hex digits: it finds a slip or a hand, and proves nothing. */
const sumUp = (consultation: object): string =>
  (crc32.str(JSON.stringify(consultation)) >>> 0).toString(16).padStart(8, '0');

/** How the file begins, whatever stands in it, and how it ends. */
const BEGINNING = '{"strandproof":"consultations",';
const END = '\n]}';

/**
 * Consultations as JSON (published: RFC 8259), piece by piece, one to a line: each the whole log it is the fold of, that
 * fold, and the editions of the settings that its entries name. A moment stands in ms since 1970-01-01 UTC, which is what
 * is judged; beside it for people as RFC 3339 with the tablet's offset. Nobody who works here is named but in `by`.
 * Nobody who was practised with stands in it. Checked in tests/shared/records/json/consultationFile.test.ts.
 */
export function* writeConsultations(
  leaving: Iterable<LeavingConsultation>,
  { madeAtMs, ...head }: FileHead,
  writeMoment: (atMs: number) => string,
): Generator<string, void> {
  const made = { madeAt: writeMoment(madeAtMs), madeAtMs };
  const whole = { v: CONSULTATIONS_VERSION, modelVersion: MODEL_VERSION, ...made, ...head };
  yield `${BEGINNING}${toJson(whole).slice(1, -1)},"consultations":[`;
  let before = '\n';
  for (const { record, log, settings } of leaving) {
    if (isPracticeId(record.id)) continue;
    const told = log.map((entry) => ({ at: writeMoment(entry.atMs), entry }));
    const body = { id: record.id, settings, log: told, record };
    yield `${before}${toJson({ ...body, sum: sumUp(body) })}`;
    before = ',\n';
  }
  yield `${END}\n`;
}

/**
 * Why a file is not brought in; nothing of it was used. `notRead`: it is gone, or this page may not read it. `table`,
 * `backup`: the station's own, and another thing. `invented`: of the invented salon where this one is not, or the other way
 * round. `fromLater`: more than a day after this tablet's clock. `practice`: somebody in it was practised with.
 */
export type RecordsRefusal =
  | 'notRead'
  | 'anotherProgram'
  | 'table'
  | 'backup'
  | 'notText'
  | 'cutOff'
  | 'damaged'
  | 'newer'
  | 'invented'
  | 'practice'
  | 'fromLater';

/** The station's own files that are something else, by how they begin. */
const others = [
  ['table', `${columnNames.slice(0, 3).join(',')},`],
  ['backup', '{"strandproof":"backup"'],
] as const;

function parseJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

function nameUnparsed(text: string): RecordsRefusal {
  const other = others.find(([, beginning]) => text.startsWith(beginning));
  if (other !== undefined) return other[0];
  if (text === '' || !text.startsWith(BEGINNING.slice(0, text.length))) return 'anotherProgram';
  return text.endsWith(END) ? 'damaged' : 'cutOff';
}

const entrySchema = v.looseObject({ settingsId: v.number() });
const tellSchema = toldSchemaOf(entrySchema, v.looseObject({}));
const doorSchema = fileSchemaOf(v.unknown(), v.unknown(), v.unknown());

/** A consultation that is whole, with its settings, as it was written; null where a letter of it was changed since. */
export function readTold(told: unknown): ToldConsultation | null {
  const read = v.safeParse(tellSchema, told);
  if (!read.success) return null;
  const { sum, ...body } = told as { readonly sum: string };
  const { id, settings, log } = read.output;
  const entries = log.map(({ entry }) => entry as v.InferOutput<typeof entrySchema>);
  const isNamed = entries.every(({ settingsId }) => findCarried(settings, settingsId) !== undefined);
  return isNamed && sum === sumUp(body) ? { id, settings, log: entries } : null;
}

/** When a file was made, as it says itself, and what its station could not read any more. */
export interface MadeFile extends Made {
  /** RFC 3339, with the offset of that tablet then. */
  readonly madeAt: string;
  readonly unread: readonly unknown[];
}

/**
 * What consultations does this file tell, and when was it made? All of them or none: a file that ends too early, of which a
 * letter was changed, is another program's, of a newer edition, or was read in another encoding is refused by name. A pause
 * lies after each consultation, so that whoever reads can let others have a turn.
 */
export function* readConsultations(
  file: string,
): Generator<
  void,
  Result<{ readonly told: readonly ToldConsultation[]; readonly made: MadeFile }, RecordsRefusal>
> {
  // What was cut off in the middle of a letter ends in such a sign, and is cut off all the same.
  const text = file.replace(/^\ufeff|\ufffd+$/g, '').trim();
  if (text.includes(UNREADABLE) || text.includes('\0')) return refuse('notText');
  const content = parseJson(text);
  if (content === undefined) return refuse(nameUnparsed(text));
  const head = v.safeParse(headSchema, content);
  if (!head.success) return refuse('anotherProgram');
  if (head.output.v > CONSULTATIONS_VERSION || head.output.modelVersion > MODEL_VERSION) {
    return refuse('newer');
  }
  const read = v.safeParse(doorSchema, content);
  if (!read.success) return refuse('damaged');
  const told: ToldConsultation[] = [];
  for (const each of read.output.consultations) {
    const one = readTold(each);
    yield;
    if (one === null) return refuse('damaged');
    if (isPracticeId(one.id)) return refuse('practice');
    told.push(one);
  }
  return accept({ told, made: read.output });
}
