import * as v from 'valibot';
import { accept, type Result, refuse } from '../result';
import {
  BY_MAX_LENGTH,
  type ConsultationEvent,
  EVENT_VERSION,
  MODEL_VERSION,
  type OpenedPayload,
} from './event';
import { eventForms } from './forms/byEvent';
import { answerSchemas, lastTimeSchema } from './lastTime';
import { schemaOfForm } from './schema';
import { askSteps } from './steps';
import { tokenSchemas } from './tokenSchema';

/** Why a stored entry cannot be taken for an event. */
export type EntryFault = 'notAnEvent' | 'newerVersion' | 'unknownType' | 'badPayload' | 'badTokens';

const envelope = v.strictObject({
  v: v.pipe(v.number(), v.integer(), v.minValue(1)),
  type: v.string(),
  payload: v.record(v.string(), v.unknown()),
  tokens: v.record(v.string(), v.unknown()),
  atMs: v.pipe(v.number(), v.safeInteger(), v.minValue(0)),
  by: v.pipe(v.string(), v.minLength(1), v.maxLength(BY_MAX_LENGTH)),
  settingsId: v.pipe(v.number(), v.safeInteger(), v.minValue(0)),
  modelVersion: v.pipe(v.number(), v.safeInteger(), v.minValue(1)),
});

const answered = v.variant(
  'step',
  askSteps.map((step) => v.strictObject({ step: v.literal(step), answers: answerSchemas[step] })),
);

/** Last time is there exactly where a person named it. */
const opened = v.pipe(
  schemaOfForm({ ...eventForms.OPENED }, 'whole', { lastTime: v.optional(lastTimeSchema) }),
  v.check((payload) => {
    const { lastTimeId, lastTime } = payload as OpenedPayload;
    return (lastTime?.id ?? '') === lastTimeId;
  }, 'last time'),
);

const payloads: ReadonlyMap<string, v.GenericSchema> = new Map([
  ...Object.entries(eventForms).map(([type, form]) => [type, schemaOfForm(form)] as const),
  ['OPENED', opened] as const,
  ['ANSWERED', answered] as const,
]);

/** Each event as it is stored, one schema a type: for whoever reads a file; the door below says which part is wrong. */
export const entrySchemas = [...payloads].map(([type, payload]) =>
  v.strictObject({
    ...envelope.entries,
    type: v.literal(type),
    payload,
    tokens: tokenSchemas.get(type) ?? v.never(),
  }),
);

/**
 * Is this stored entry an event this station understands?
 * The door for everything read from store or import. A newer version, of the event or of the model that judged it, is
 * named, never guessed at; `modelVersion` is the model this station judges by. Tokens have to be of the right kinds
 * here; replaying the log judges them anew and compares.
 */
export function parseEvent(
  entry: unknown,
  modelVersion = MODEL_VERSION,
): Result<ConsultationEvent, EntryFault> {
  const read = v.safeParse(envelope, entry);
  if (!read.success) return refuse(hasNewerVersion(entry) ? 'newerVersion' : 'notAnEvent');
  if (read.output.v > EVENT_VERSION || read.output.modelVersion > modelVersion) return refuse('newerVersion');
  const schema = payloads.get(read.output.type);
  const tokens = tokenSchemas.get(read.output.type);
  if (schema === undefined || tokens === undefined) return refuse('unknownType');
  if (!v.is(schema, read.output.payload)) return refuse('badPayload');
  if (!v.is(tokens, read.output.tokens)) return refuse('badTokens');
  return accept(read.output as unknown as ConsultationEvent);
}

/** A newer envelope may have fields this one does not know. */
const hasNewerVersion = (entry: unknown): boolean =>
  typeof entry === 'object' && entry !== null && 'v' in entry && Number(entry.v) > EVENT_VERSION;
