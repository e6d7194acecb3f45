import * as v from 'valibot';
import { digest } from '../../shared/records/documents/canonical';
import { type NewerDocument, recordIdSchema } from '../../shared/records/documents/document';
import { formTicketKey } from '../../shared/records/ticket';
import type { Json } from '../storage/json';
import { findTicket } from './findTicket';
import { UNJUDGED_LOG } from './logNames';

/** Raised whenever what is kept of such a document changes its shape. Whose it is stays where it stands. */
const UNJUDGED_VERSION = 1;

/** Why nobody here knows what it says: a newer edition of the station wrote it, or it could not have been tapped like that. */
export type UnjudgedWhy = 'newer' | 'notJudged';

/** Another station's record that this edition cannot judge, and whose it is: what it says may be a stop. */
export interface Unjudged {
  /** Of the record itself. */
  readonly id: string;
  readonly kind: 'consultation' | 'skinTest';
  readonly ticket: string;
  readonly ticketKey: string;
  /** When it came in, by this station's clock, ms since 1970-01-01 UTC. */
  readonly cameAtMs: number;
  readonly why: UnjudgedWhy;
  /** The digest of its log: another log of the same record is another one. */
  readonly text: string;
}

/** Erased by one id and corrected by the other, so both are the record's. */
const keptSchema = v.pipe(
  v.looseObject({
    id: recordIdSchema,
    cameAtMs: v.pipe(v.number(), v.safeInteger()),
    why: v.picklist(['newer', 'notJudged']),
    document: v.looseObject({ id: v.string(), kind: v.string(), body: v.looseObject({ id: v.string() }) }),
  }),
  v.check(({ id, document }) => id === document.body.id),
);

const logSchema = v.looseObject({ log: v.array(v.unknown()) });
const toldSchema = v.looseObject({ entry: v.unknown() });

/** Whose is it, as far as its first entry still says? */
function findTicketOf({ body }: NewerDocument): string | null {
  const read = v.safeParse(logSchema, body);
  const [first] = read.success ? read.output.log : [];
  return findTicket([v.is(toldSchema, first) ? first.entry : first]);
}

const digestText = ({ body }: NewerDocument): string => {
  const read = v.safeParse(logSchema, body);
  return digest(read.success ? read.output.log : body);
};

/** Can it be kept so that it stops whose it is? One that names nobody stops nobody. */
export const namesHer = (document: NewerDocument): boolean => findTicketOf(document) !== null;

/** What is written down of it: whose record, when and whence it came, why it is not taken up, and all of it as it lay there. */
export const writeUnjudged = (document: NewerDocument, cameAtMs: number, why: UnjudgedWhy): Json =>
  ({
    v: UNJUDGED_VERSION,
    id: document.body.id,
    ...{ cameAtMs, from: 'otherStations', why, document },
  }) as unknown as Json;

type Logs = ReadonlyMap<string, readonly Json[]>;

/** What is kept so, entry by entry; null for one that is no such thing. */
export const listKept = (logs: Logs) =>
  (logs.get(UNJUDGED_LOG) ?? []).map((entry) => {
    const read = v.safeParse(keptSchema, entry);
    return { entry, kept: read.success ? read.output : null };
  });

/**
 * Which records of other stations stand here that nobody could judge? Each text of it once; `unread`: places of entries that are no such
 * thing. Checked in tests/src/station/unjudged.test.ts.
 */
export function readUnjudged(logs: Logs): {
  readonly unjudged: readonly Unjudged[];
  readonly unread: readonly number[];
} {
  const byText = new Map<string, Unjudged>();
  const unread: number[] = [];
  for (const [seq, { kept }] of listKept(logs).entries()) {
    const ticket = kept === null ? null : findTicketOf(kept.document);
    if (kept === null || ticket === null) unread.push(seq);
    else {
      const { cameAtMs, why, document } = kept;
      const kind = document.kind === 'skinTest' ? 'skinTest' : 'consultation';
      const { id } = document.body;
      const text = digestText(document);
      byText.set(`${kind}:${id}:${text}`, {
        ...{ id, kind, ticket, cameAtMs, why, text },
        ticketKey: formTicketKey(ticket),
      });
    }
  }
  return { unjudged: [...byText.values()], unread };
}
