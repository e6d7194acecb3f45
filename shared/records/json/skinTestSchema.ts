import * as v from 'valibot';
import { skinTestForms } from '../forms/skinTest';
import { schemaOfForm } from '../schema';
import type { SkinTest } from '../skinTest/skinTest';
import { moment } from './recordSchema';

const text = v.string();
const noted = { atMs: moment, by: text };
const takenBack = v.strictObject({ ...noted, code: text, words: text });

/** What a skin test of a file says: its own record as it stood then. Nothing that the station writes is left out. */
export const skinTestSchema: v.GenericSchema = schemaOfForm(skinTestForms.SKIN_TEST_PUT_ON, 'whole', {
  id: text,
  ticketKey: text,
  noted: v.strictObject(noted),
  read: v.nullable(v.strictObject({ ...noted, isElsewhere: v.exactOptional(v.literal(true)) })),
  olderByMs: v.pipe(v.number(), v.minValue(0)),
  readingsTakenBack: v.array(takenBack),
  takenBack: v.nullable(takenBack),
  newestBy: text,
  newestAtMs: moment,
  isTold: v.exactOptional(v.literal(true)),
  cameAtMs: v.exactOptional(moment),
} satisfies {
  readonly [N in Exclude<
    keyof SkinTest,
    'ticket' | 'method' | 'site' | 'line' | 'consent' | 'forVisit' | 'putOnAtMs' | 'seen'
  >]: v.GenericSchema;
});
