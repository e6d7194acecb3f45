import * as v from 'valibot';
import { accept, type Result, refuse } from '../../result';
import { BY_MAX_LENGTH } from '../event';
import type { AnswersOf } from '../form';
import { benchForms } from '../forms/bench';
import type { EntryFault } from '../parseEvent';
import { schemaOfForm } from '../schema';

/** Raised with a migration n → n+1 whenever a stored event of a bench trial changes its shape. */
export const BENCH_VERSION = 1;

export type BenchEventType = keyof typeof benchForms;

interface EventOf<T extends BenchEventType> {
  readonly v: typeof BENCH_VERSION;
  readonly type: T;
  readonly payload: AnswersOf<(typeof benchForms)[T]>;
  readonly atMs: number;
  readonly by: string;
}

/** One thing a person did to a bench trial, as it is stored for ever. */
export type BenchEvent = { [T in BenchEventType]: EventOf<T> }[BenchEventType];

const envelope = v.looseObject({ v: v.pipe(v.number(), v.integer(), v.minValue(1)), type: v.string() });

const schemas: ReadonlyMap<string, v.GenericSchema> = new Map(
  Object.entries(benchForms).map(([type, form]) => [
    type,
    v.strictObject({
      v: v.literal(BENCH_VERSION),
      type: v.literal(type),
      payload: schemaOfForm(form),
      atMs: v.pipe(v.number(), v.safeInteger(), v.minValue(0)),
      by: v.pipe(v.string(), v.minLength(1), v.maxLength(BY_MAX_LENGTH)),
    }),
  ]),
);

/** Is this stored entry an event of a bench trial that this station understands? The door for what the store holds. */
export function parseBenchEvent(entry: unknown): Result<BenchEvent, EntryFault> {
  const read = v.safeParse(envelope, entry);
  if (!read.success) return refuse('notAnEvent');
  if (read.output.v > BENCH_VERSION) return refuse('newerVersion');
  const schema = schemas.get(read.output.type);
  if (schema === undefined) return refuse('unknownType');
  return v.is(schema, entry) ? accept(entry as BenchEvent) : refuse('badPayload');
}
