import * as v from 'valibot';

const openedSchema = v.object({ payload: v.object({ ticket: v.string() }) });

/** The ticket this log was opened for, as far as its first entry still says. */
export const findTicket = (entries: readonly unknown[]): string | null => {
  const read = v.safeParse(openedSchema, entries[0]);
  return read.success ? read.output.payload.ticket : null;
};
