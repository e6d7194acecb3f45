import * as v from 'valibot';
import { editionSchema } from '../json/carriedSettings';
import { type ToldEntry, toldEntrySchema } from '../skinTest/told';
import { writeCanonical } from './canonical';

/** An edition of the settings, and an entry of a skin test, as they stand in a document. */
export type LeanEdition = v.InferInput<typeof editionSchema>;
export type LeanEntry = Omit<ToldEntry, 'profile'> & {
  readonly profile: v.InferInput<typeof toldEntrySchema>['profile'];
};

type Told = { readonly [name: string]: unknown };
interface Shape {
  readonly entries: { readonly [name: string]: v.GenericSchema };
}

const isTold = (value: unknown): value is Told =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
const hasEntries = (schema: v.GenericSchema): schema is v.GenericSchema & Shape => 'entries' in schema;
const isOptional = ({ type }: v.GenericSchema): boolean => type === 'optional';

/** Without each optional member that says what its lack says. What is no such object stays as it lies. */
function leaveOut(told: unknown, { entries }: Shape): unknown {
  if (!isTold(told)) return told;
  const left = Object.entries(told).flatMap(([name, value]) => {
    const schema = entries[name];
    if (schema === undefined) return [[name, value]];
    if (isOptional(schema) && writeCanonical(v.getDefault(schema)) === writeCanonical(value)) return [];
    return [[name, hasEntries(schema) ? leaveOut(value, schema) : value]];
  });
  return Object.fromEntries(left);
}

/** With each optional member that lacks. */
function fillIn(told: unknown, { entries }: Shape): unknown {
  if (!isTold(told)) return told;
  const filled = Object.entries(entries).flatMap(([name, schema]) => {
    const value = told[name];
    if (isOptional(schema) && value === undefined) return [[name, v.getDefault(schema)]];
    return hasEntries(schema) && value !== undefined ? [[name, fillIn(value, schema)]] : [];
  });
  return { ...told, ...Object.fromEntries(filled) };
}

/**
 * Whether figures may name people, and in which language a station speaks, is asked by no judge. The language cannot lack
 * where stations of before read it: a document says the one they know.
 */
function leaveOutUnasked(edition: LeanEdition): LeanEdition {
  if (!isTold(edition) || !isTold(edition.settings)) return edition;
  const { figuresByStylist: _figuresByStylist, ...settings } = edition.settings;
  return { ...edition, settings: settings.locale === 'es' ? { ...settings, locale: 'en' } : settings };
}

/**
 * An edition as it goes along with a document, whose name is that of its content: only what a log is judged under, and of
 * that nothing that says what its lack says. So a member that is added to the settings, and lacks in every edition from
 * before, changes no name. Checked in tests/shared/records/documents/leanSettings.test.ts.
 */
export const leanEdition = (edition: LeanEdition): LeanEdition =>
  leaveOut(leaveOutUnasked(edition), editionSchema) as LeanEdition;
export const leanEntry = (entry: LeanEntry): LeanEntry => leaveOut(entry, toldEntrySchema) as LeanEntry;

/** The whole edition again, as a judge asks it. */
export const wholeEdition = (edition: LeanEdition) =>
  fillIn(edition, editionSchema) as v.InferOutput<typeof editionSchema>;
export const wholeEntry = (entry: LeanEntry) => fillIn(entry, toldEntrySchema) as ToldEntry;
