import * as v from 'valibot';

/** What a database says of itself. `instance_start_time`: when it was made, where the edition says it. */
export const infoSchema = v.object({
  db_name: v.string(),
  doc_count: v.pipe(v.number(), v.integer(), v.minValue(0)),
  instance_start_time: v.optional(v.union([v.string(), v.number()]), '0'),
});

/**
 * What the station's own server says of itself, and no database does (scripts/forward.mjs): each of them says that others
 * were set up.
 */
export const saidSchema = v.object({ error: v.picklist(['gone', 'refused', 'notHere']) });

/** What changed there, in its order. A place in that order is a text or a number that means something there alone. */
export const changesSchema = v.object({
  results: v.array(
    v.object({
      id: v.string(),
      deleted: v.optional(v.boolean(), false),
      changes: v.pipe(v.array(v.object({ rev: v.string() })), v.minLength(1)),
    }),
  ),
  last_seq: v.union([v.string(), v.number()]),
});

/** Rows that were asked for by name; a row without a document is not there, or deleted. */
export const rowsSchema = v.object({
  rows: v.array(
    v.object({
      doc: v.nullish(v.looseObject({ _id: v.string(), _rev: v.string() })),
    }),
  ),
});

/** What became of each document that was sent; of those without `ok` nothing is believed. */
export const keptSchema = v.array(
  v.object({ id: v.optional(v.string()), ok: v.optional(v.boolean()), rev: v.optional(v.string()) }),
);
