import * as v from 'valibot';
import { accept, type Result, refuse } from '../../result';
import { editionSchema } from '../json/carriedSettings';
import type { ToldConsultation } from '../json/consultationFile';
import { isPracticeId } from '../practiceId';
import { toldEntrySchema } from '../skinTest/told';
import { readErasedIds } from '../tombstone';
import { digest } from './canonical';
import type { LeanEdition, LeanEntry } from './leanSettings';

/** A closed consultation: its log, and the house rules its entries name. */
export type ConsultationBody = Omit<ToldConsultation, 'settings'> & {
  readonly settings: readonly LeanEdition[];
};

/** A skin test as one station tells it. */
export interface SkinTestBody {
  readonly id: string;
  readonly log: readonly LeanEntry[];
}

/**
 * What stations hand on to each other, one thing at a time. It never changes: its name is that of its content, so what
 * two stations hold alike has one name, and what they hold otherwise has two.
 */
export type RecordDocument =
  | { readonly id: string; readonly kind: 'consultation'; readonly body: ConsultationBody }
  | { readonly id: string; readonly kind: 'skinTest'; readonly body: SkinTestBody }
  /** What was erased, as it stands in the log of erasings. */
  | { readonly id: string; readonly kind: 'erased'; readonly body: unknown };

/** One that is whole and of a newer edition: which record it is of is known, and what it says is not. */
export interface NewerDocument {
  readonly id: string;
  readonly kind: string;
  readonly body: { readonly id: string };
}

/** `consultation:RECORD:DIGEST`, `skinTest:RECORD:DIGEST`, `erased:DIGEST`. */
const nameDocument = (kind: string, body: unknown, recordId: string | null): string =>
  [kind, ...(recordId === null ? [] : [recordId]), digest(body)].join(':');

/** By this a record is known everywhere: chance, and nothing of hers. */
export const recordIdSchema = v.pipe(v.string(), v.regex(/^[a-z0-9]{4,32}$/));
const namedSchema = v.object({ id: recordIdSchema });
const findRecordId = (body: unknown): string | null => {
  const read = v.safeParse(namedSchema, body);
  return read.success ? read.output.id : null;
};

const documentOf =
  <K extends RecordDocument['kind'], B>(kind: K, findId: (body: B) => string | null) =>
  (body: B) => ({ id: nameDocument(kind, body, findId(body)), kind, body });

export const documentConsultation = documentOf('consultation', ({ id }: ConsultationBody) => id);
export const documentSkinTest = documentOf('skinTest', ({ id }: SkinTestBody) => id);
export const documentErased = documentOf('erased', (_entry: unknown) => null);

const entrySchema = v.looseObject({ settingsId: v.number() });
const consultationSchema = v.pipe(
  v.strictObject({
    id: recordIdSchema,
    settings: v.array(editionSchema),
    log: v.pipe(v.array(entrySchema), v.minLength(1)),
  }),
  v.check(({ settings, log }) => log.every(({ settingsId }) => settings.some(({ id }) => id === settingsId))),
);
const skinTestSchema = v.strictObject({
  id: recordIdSchema,
  log: v.pipe(v.array(toldEntrySchema), v.minLength(1)),
});

const isUnderstood = (kind: string, body: unknown): boolean => {
  if (kind === 'consultation') return v.is(consultationSchema, body);
  return kind === 'skinTest' ? v.is(skinTestSchema, body) : readErasedIds(body) !== null;
};

/** `changed`: its name says another content. `notUnderstood`: whole, but of a newer edition. `notADocument`: also what was practised. */
export type DocumentRefusal = 'notADocument' | 'changed' | 'notUnderstood';

/** Of which record is this, which `readDocument` does not understand? null: of none. */
export const readNewer = ({ id, kind, body }: Omit<NewerDocument, 'body'> & { readonly body: unknown }) =>
  kind !== 'erased' && v.is(namedSchema, body) ? { id, kind, body } : null;

const envelope = v.strictObject({ id: v.string(), kind: v.string(), body: v.looseObject({}) });

/**
 * Is this, from wherever it came, a document that is what its name says? Its log is not judged yet: that is for whoever
 * takes it up. Checked in tests/shared/records/documents/document.test.ts.
 */
export function readDocument(told: unknown): Result<RecordDocument, DocumentRefusal> {
  if (!v.is(envelope, told)) return refuse('notADocument');
  const { id, kind, body } = told;
  const recordId = kind === 'erased' ? null : findRecordId(body);
  if (recordId !== null && isPracticeId(recordId)) return refuse('notADocument');
  if (id !== nameDocument(kind, body, recordId)) return refuse('changed');
  if (!['consultation', 'skinTest', 'erased'].includes(kind)) return refuse('notUnderstood');
  return isUnderstood(kind, body) ? accept(told as unknown as RecordDocument) : refuse('notUnderstood');
}
