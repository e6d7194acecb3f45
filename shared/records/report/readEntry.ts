import * as v from 'valibot';

/** A text as JSON; undefined where it is none. */
export function parseJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

const stampSchema = v.object({ atMs: v.number(), settingsId: v.number() });
const openedSchema = v.object({ payload: v.object({ ticket: v.string() }) });
const toldSchema = v.object({ log: v.array(v.object({ entry: v.unknown() })) });

/** From 0001-01-02 and before 9999-12-31 in UTC, ms: a year of a day has four digits (published: RFC 3339, section 5.6), whatever the zone. */
const FIRST_MS = -62_135_510_400_000;
const END_MS = 253_402_214_400_000;

/** Is this moment, ms since 1970-01-01 UTC, beyond any day that can be written? What is no moment at all is not. */
export const isBeyondDays = (atMs: number): boolean => atMs < FIRST_MS || atMs >= END_MS;

/** When was this entry made, ms since 1970-01-01 UTC, and under which settings? Not looked into further; NaN where it says neither. */
export function readEntry(entry: unknown): { readonly atMs: number; readonly settingsId: number } {
  const read = v.safeParse(stampSchema, entry);
  return read.success ? read.output : { atMs: Number.NaN, settingsId: Number.NaN };
}

/** The ticket a log was opened for, as far as its first entry, or a damaged consultation of a file, still says; else null. */
export function findTicket({ log }: { readonly log: readonly unknown[] }): string | null {
  const read = v.safeParse(openedSchema, log[0]);
  return read.success ? read.output.payload.ticket : null;
}

/** The same of one consultation as it lies in a file, damaged perhaps. */
export function findTicketTold(told: unknown): string | null {
  const read = v.safeParse(toldSchema, told);
  return read.success ? findTicket({ log: read.output.log.map(({ entry }) => entry) }) : null;
}
