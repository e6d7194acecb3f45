import * as v from 'valibot';
import { editionSchema } from './carriedSettings';

const whole = v.pipe(v.number(), v.safeInteger(), v.minValue(1));
/** published: RFC 3339, section 5.6, with its offset. */
const said = v.pipe(v.string(), v.isoTimestamp(), v.description('the same moment for people, never read'));
const day = v.pipe(v.string(), v.isoDate());

/** By these a file is known as ours, of whatever edition. */
export const headSchema = v.object({
  strandproof: v.literal('consultations'),
  v: whole,
  modelVersion: whole,
});

/** One consultation of a file; how deep its entries and its record are looked into is for whoever asks. */
export const toldSchemaOf = (entry: v.GenericSchema, record: v.GenericSchema) =>
  v.strictObject({
    id: v.pipe(v.string(), v.regex(/^[a-z0-9]{4,32}$/)),
    settings: v.array(editionSchema),
    log: v.pipe(v.array(v.strictObject({ at: said, entry })), v.minLength(1)),
    record,
    sum: v.pipe(
      v.string(),
      v.regex(/^[0-9a-f]{8}$/),
      v.description('CRC-32 of id, settings, log and record as JSON without spaces, in UTF-8'),
    ),
  });

/** The whole file, with what each of its lists holds. */
export const fileSchemaOf = (
  consultation: v.GenericSchema,
  skinTest: v.GenericSchema,
  unread: v.GenericSchema,
) =>
  v.strictObject({
    ...headSchema.entries,
    isDemo: v.boolean(),
    madeAt: said,
    madeAtMs: v.pipe(v.number(), v.safeInteger(), v.description('ms since 1970-01-01 UTC')),
    from: day,
    to: day,
    skinTests: v.array(skinTest),
    unread: v.array(unread),
    consultations: v.array(consultation),
  });
