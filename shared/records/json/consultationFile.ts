import * as v from 'valibot';
import { accept, type Result, refuse } from '../../result';
import { MODEL_VERSION } from '../event';
import type { ConsultationRecord } from '../record';

/** Raised with a migration whenever the file changes its shape. */
export const CONSULTATIONS_VERSION = 1;

/** One consultation as it leaves the house: what people did, and what that came to. */
export interface LeavingConsultation {
  readonly record: ConsultationRecord;
  /** As it was written, for ever. */
  readonly log: readonly { readonly atMs: number }[];
}

/** The same, as a file tells it: nothing of it is believed before its log was judged anew. */
export interface ToldConsultation {
  readonly id: string;
  readonly log: readonly unknown[];
  readonly record: object;
}

const whole = v.pipe(v.number(), v.safeInteger(), v.minValue(1));
/** published: RFC 3339, section 5.6, with its offset. */
const moment = v.pipe(v.string(), v.isoTimestamp());

const headSchema = v.object({
  strandproof: v.literal('consultations'),
  v: whole,
  modelVersion: whole,
});
const fileSchema = v.strictObject({
  ...headSchema.entries,
  madeAt: moment,
  consultations: v.array(
    v.strictObject({
      id: v.pipe(v.string(), v.regex(/^[a-z0-9]{4,32}$/)),
      log: v.pipe(v.array(v.strictObject({ at: moment, entry: v.unknown() })), v.minLength(1)),
      record: v.custom<object>((record) => typeof record === 'object' && record !== null),
    }),
  ),
});

/** The sign a decoder puts where it could not read is written as its number, so that only a wrong encoding shows it. */
const UNREADABLE = '\ufffd';
const toJson = (value: unknown): string => JSON.stringify(value).replaceAll(UNREADABLE, '\\ufffd');

/** How the file of `consultations` begins, whatever stands in it. */
const BEGINNING = '{"strandproof":"consultations",';

/**
 * Consultations as JSON (published: RFC 8259), piece by piece, one to a line: each the whole log it is the fold of, and
 * that fold. A moment stands in the log in ms since 1970-01-01 UTC, which is what is judged; beside it for people as RFC
 * 3339 with the tablet's offset, which is never read. Settings are left out: they name everybody who works here. So the
 * file comes back to a station with the same settings; to another tablet goes the whole station.
 * Checked in tests/shared/records/json/consultationFile.test.ts.
 */
export function* writeConsultations(
  leaving: Iterable<LeavingConsultation>,
  madeAtMs: number,
  writeMoment: (atMs: number) => string,
): Generator<string, void> {
  const head = { v: CONSULTATIONS_VERSION, modelVersion: MODEL_VERSION, madeAt: writeMoment(madeAtMs) };
  yield `${BEGINNING}${toJson(head).slice(1, -1)},"consultations":[`;
  let before = '\n';
  for (const { record, log } of leaving) {
    const told = log.map((entry) => ({ at: writeMoment(entry.atMs), entry }));
    yield `${before}${toJson({ id: record.id, log: told, record })}`;
    before = ',\n';
  }
  yield '\n]}\n';
}

/** Why a file is not read; nothing of it was used. */
export type FileRefusal = 'anotherProgram' | 'cutOff' | 'damaged' | 'newer' | 'notText';

function parseJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

/**
 * What consultations does this file tell? All of them or none: a file that ends too early, is another program's, of a
 * newer edition, or was read in another encoding is refused by name.
 */
export function readConsultations(file: string): Result<readonly ToldConsultation[], FileRefusal> {
  // What was cut off in the middle of a letter ends in such a sign, and is cut off all the same.
  const text = file.replace(/^\ufeff|\ufffd+$/g, '').trim();
  if (text.includes(UNREADABLE) || text.includes('\0')) return refuse('notText');
  const content = parseJson(text);
  if (content === undefined) {
    if (!text.startsWith(BEGINNING.slice(0, text.length)) || text === '') return refuse('anotherProgram');
    return refuse(text.endsWith('\n]}') ? 'damaged' : 'cutOff');
  }
  const head = v.safeParse(headSchema, content);
  if (!head.success) return refuse('anotherProgram');
  if (head.output.v > CONSULTATIONS_VERSION || head.output.modelVersion > MODEL_VERSION) {
    return refuse('newer');
  }
  const read = v.safeParse(fileSchema, content);
  if (!read.success) return refuse('damaged');
  return accept(
    read.output.consultations.map(({ id, log, record }) => ({
      id,
      record,
      log: log.map(({ entry }) => entry),
    })),
  );
}
