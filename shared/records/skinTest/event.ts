import * as v from 'valibot';
import { accept, type Result, refuse } from '../../result';
import { BY_MAX_LENGTH } from '../event';
import type { AnswersOf } from '../form';
import { skinTestForms } from '../forms/skinTest';
import type { EntryFault } from '../parseEvent';
import { schemaOfForm } from '../schema';

/** Raised with a migration n → n+1 whenever a stored event of a skin test changes its shape. */
export const SKIN_TEST_VERSION = 1;

export type SkinTestEventType = keyof typeof skinTestForms;

interface EventOf<T extends SkinTestEventType> {
  readonly v: typeof SKIN_TEST_VERSION;
  readonly type: T;
  readonly payload: AnswersOf<(typeof skinTestForms)[T]>;
  readonly atMs: number;
  readonly by: string;
  readonly settingsId: number;
}

/** One thing a person did to a skin test, as it is stored for ever. */
export type SkinTestEvent = { [T in SkinTestEventType]: EventOf<T> }[SkinTestEventType];

const envelope = v.looseObject({ v: v.pipe(v.number(), v.integer(), v.minValue(1)), type: v.string() });

const schemas: ReadonlyMap<string, v.GenericSchema> = new Map(
  Object.entries(skinTestForms).map(([type, form]) => [
    type,
    v.strictObject({
      v: v.literal(SKIN_TEST_VERSION),
      type: v.literal(type),
      payload: schemaOfForm(form),
      atMs: v.pipe(v.number(), v.safeInteger(), v.minValue(0)),
      by: v.pipe(v.string(), v.minLength(1), v.maxLength(BY_MAX_LENGTH)),
      settingsId: v.pipe(v.number(), v.safeInteger(), v.minValue(0)),
    }),
  ]),
);

/** Is this stored entry an event of a skin test that this station understands? The door for what the store holds. */
export function parseSkinTestEvent(entry: unknown): Result<SkinTestEvent, EntryFault> {
  const read = v.safeParse(envelope, entry);
  if (!read.success) return refuse('notAnEvent');
  if (read.output.v > SKIN_TEST_VERSION) return refuse('newerVersion');
  const schema = schemas.get(read.output.type);
  if (schema === undefined) return refuse('unknownType');
  return v.is(schema, entry) ? accept(entry as SkinTestEvent) : refuse('badPayload');
}
