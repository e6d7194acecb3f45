import * as v from 'valibot';
import { writeCanonical } from './documents/canonical';
import type { ConsultationEvent } from './event';
import type { CarriedEdition } from './json/carriedSettings';
import { parseEvent } from './parseEvent';
import { type ConsultationRecord, type Ending, endings } from './record';
import { hasStandingStop } from './standingStop';
import { formTicketKey } from './ticket';

/** Raised with a migration whenever a closed record changes its shape. */
export const CLOSED_VERSION = 1;

/** A consultation that is over, kept for its month: its whole log, and what is asked of it without reading the log. */
export interface ClosedRecord {
  readonly v: typeof CLOSED_VERSION;
  readonly id: string;
  readonly ticketKey: string;
  readonly endedAtMs: number;
  readonly how: Ending;
  /** An absolute stop that was never corrected goes on standing for the same ticket. */
  readonly hasStandingStop: boolean;
  /** A stop handed on by an earlier record was corrected by name in this one. */
  readonly hasClearedStop: boolean;
  /** As it was written, for ever: `parseClosedLog` says what of it is understood today. */
  readonly log: readonly unknown[];
  /** It came in from a file, then, and was judged under these settings; lacking where she was at this station. */
  readonly broughtIn?: { readonly atMs: number; readonly settings: readonly CarriedEdition[] };
}

/** How a closed record is kept. */
export const closedSchema = v.strictObject({
  v: v.literal(CLOSED_VERSION),
  id: v.pipe(v.string(), v.regex(/^[a-z0-9]{4,32}$/)),
  ticketKey: v.string(),
  endedAtMs: v.pipe(v.number(), v.safeInteger()),
  how: v.picklist(endings),
  hasStandingStop: v.boolean(),
  hasClearedStop: v.boolean(),
  log: v.array(v.unknown()),
  broughtIn: v.exactOptional(
    v.strictObject({ atMs: v.pipe(v.number(), v.safeInteger()), settings: v.array(v.unknown()) }),
  ),
});

/** What is kept of a consultation that ended; null while it is open. */
export const closeRecord = (
  record: ConsultationRecord,
  log: readonly ConsultationEvent[],
): ClosedRecord | null =>
  record.ended === null
    ? null
    : {
        v: CLOSED_VERSION,
        id: record.id,
        ticketKey: formTicketKey(record.ticket),
        endedAtMs: record.ended.atMs,
        how: record.ended.how,
        hasStandingStop: hasStandingStop(record),
        hasClearedStop: record.corrections.some(({ answer }) => answer === 'inherited'),
        log,
      };

/** Is this stored entry a closed record? null when it is not. Log and settings are not looked into: there may be years of them. */
export const parseClosedRecord = (entry: unknown): ClosedRecord | null => {
  const read = v.safeParse(closedSchema, entry);
  return read.success ? (read.output as ClosedRecord) : null;
};

/** What events is the log of a closed record? null when one of them is none that this station understands. */
export function parseClosedLog({ log }: Pick<ClosedRecord, 'log'>): readonly ConsultationEvent[] | null {
  const events: ConsultationEvent[] = [];
  for (const entry of log) {
    const event = parseEvent(entry);
    if (!event.ok) return null;
    events.push(event.value);
  }
  return events;
}

/** Do both logs say the same, entry by entry? However their members are ordered: a file may have been set out otherwise. */
export const isSameLog = (one: readonly unknown[], other: readonly unknown[]): boolean =>
  one.length === other.length &&
  (JSON.stringify(one) === JSON.stringify(other) || writeCanonical(one) === writeCanonical(other));
