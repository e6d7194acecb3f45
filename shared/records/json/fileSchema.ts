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
    settings: v.pipe(
      v.array(editionSchema),
      v.description('The house rules that entries name by `settingsId`; without who works there.'),
    ),
    log: v.pipe(
      v.array(v.strictObject({ at: said, entry })),
      v.minLength(1),
      v.description(
        'Every tap in its order, who made it (`by`) and when: what is judged when the file comes in.',
      ),
    ),
    record: v.pipe(record, v.description('What the log comes to, for whoever reads it: never read back.')),
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
    skinTests: v.pipe(v.array(skinTest), v.description('Skin tests written on these days: never read back.')),
    unread: v.pipe(v.array(unread), v.description('Records that this station cannot read, as they lie.')),
    consultations: v.array(consultation),
  });
