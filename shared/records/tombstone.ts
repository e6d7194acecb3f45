import * as v from 'valibot';

/** Raised whenever a tombstone changes its shape. An older station still understands the ids of a newer one. */
export const TOMBSTONE_VERSION = 1;

/** Why records were erased. */
export const eraseCodes = ['sheAsked', 'keptLongEnough', 'wrongClient'] as const;
export type EraseCode = (typeof eraseCodes)[number];

/**
 * What stays of records that were erased: which they were, when, by whom and why. An id is chance and names nobody; no
 * ticket and no initials stand here, so it may be kept for ever.
 */
export interface Tombstone {
  readonly v: typeof TOMBSTONE_VERSION;
  /** Consultations and skin tests, by their ids: erased all together or not at all. */
  readonly ids: readonly string[];
  /** ms since 1970-01-01 UTC. */
  readonly atMs: number;
  readonly by: string;
  readonly code: EraseCode;
}

const idsSchema = v.looseObject({ ids: v.array(v.string()) });
const schema = v.looseObject({
  ids: v.array(v.string()),
  atMs: v.pipe(v.number(), v.safeInteger()),
  by: v.string(),
  code: v.picklist(eraseCodes),
});

/** Which records does this stored entry say are erased? null when it says nothing of the kind. */
export const readErasedIds = (entry: unknown): readonly string[] | null => {
  const read = v.safeParse(idsSchema, entry);
  return read.success ? read.output.ids : null;
};

/** When, by whom and why? null where a newer station wrote it otherwise: it is erased all the same. */
export const readTombstone = (entry: unknown): Pick<Tombstone, 'ids' | 'atMs' | 'by' | 'code'> | null => {
  const read = v.safeParse(schema, entry);
  return read.success ? read.output : null;
};

/**
 * An erasing for age that came in from another house, as it is stored: its keeping time is not that of this one, so by itself it
 * takes nothing away here. Once what it names is past this house's own time too, an erasing of this house does.
 */
interface ToldTombstone {
  readonly told: unknown;
}

const toldSchema = v.strictObject({ told: v.looseObject({ ids: v.array(v.string()) }) });
export const isToldErasing = (entry: unknown): entry is ToldTombstone => v.is(toldSchema, entry);

/** As the house wrote it that erased: so it goes on to others, under the name of its content. */
export const untell = (entry: unknown): unknown => (isToldErasing(entry) ? entry.told : entry);

/** As this house stores what another one erased: at its word, but for what was only too old there. */
export const takeTold = (tombstone: unknown): unknown =>
  readTombstone(tombstone)?.code === 'keptLongEnough' ? { told: tombstone } : tombstone;

/** The erasings for age of other houses in the log of erasings. */
export const listToldForAge = (
  entries: readonly unknown[],
): readonly Pick<Tombstone, 'ids' | 'atMs' | 'by' | 'code'>[] =>
  entries.filter(isToldErasing).flatMap(({ told }) => readTombstone(told) ?? []);
