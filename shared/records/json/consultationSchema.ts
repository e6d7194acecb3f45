import { toJsonSchema } from '@valibot/to-json-schema';
import * as v from 'valibot';
import { closedSchema } from '../closedRecord';
import { answerSchemas, answersSchema, lastTimeSchema } from '../lastTime';
import { entrySchemas } from '../parseEvent';
import { fileSchemaOf, toldSchemaOf } from './fileSchema';
import { recordSchema } from './recordSchema';
import { skinTestSchema } from './skinTestSchema';

/** The whole file down to each answer; what is stored is parsed by the very same schemas. */
export const consultationsSchema = v.pipe(
  fileSchemaOf(
    toldSchemaOf(v.variant('type', entrySchemas as never), recordSchema),
    skinTestSchema,
    closedSchema,
  ),
  v.title('Consultations of a Strandproof station'),
  v.description(
    'Names that end in a unit are in it: Ms milliseconds, Min minutes, C °C, G grams, Percent per cent; levels 1 black to 10 lightest blond. Local law, the maker’s directions and a licensed professional’s judgement come first.',
  ),
);

/** Rules between answers, which the judge knows and JSON Schema does not; trimming; and that a number is finite, as all JSON is. */
const UNSAID = ['check', 'trim', 'finite'];

/**
 * What each member of a JSON of consultations may be, as a file beside it: JSON Schema (published: draft 2020-12). What can
 * be said in no schema (may this follow that, was a strand tested) the chart and the gate ask when the file comes in.
 * Checked in tests/shared/records/json/consultationSchema.test.ts.
 */
export function writeConsultationSchema(): string {
  const schema = toJsonSchema(consultationsSchema, {
    target: 'draft-2020-12',
    typeMode: 'output',
    ignoreActions: UNSAID,
    definitions: { ...answerSchemas, answers: answersSchema, lastTime: lastTimeSchema },
  });
  return `${JSON.stringify(schema, null, 1)}\n`;
}
