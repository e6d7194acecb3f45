import { type Accessor, createSignal } from 'solid-js';
import type { Form } from '../../../shared/records/form';
import {
  type FieldRefusal,
  type Raw,
  type RawForm,
  type ReadingContext,
  readForm,
} from '../../../shared/records/readForm';

/** What has been tapped and typed into one form so far, right or wrong. It is never changed but by the person. */
export interface Draft {
  readonly raw: Accessor<RawForm>;
  readonly set: (name: string, value: Raw) => void;
  /** Begins anew with other contents: after what was typed has been taken. */
  readonly begin: (raw: RawForm) => void;
}

/** A draft that begins with these contents, such as `writeForm` gives for stored answers. */
export function createDraft(initial: RawForm = {}): Draft {
  const [raw, setRaw] = createSignal<RawForm>(initial);
  return {
    raw,
    set: (name, value) => setRaw((before) => ({ ...before, [name]: value })),
    begin: (next) => setRaw(next),
  };
}

const findAt = (raw: Raw | RawForm, path: readonly string[]): Raw | RawForm => {
  const [name, ...rest] = path;
  if (name === undefined) return raw;
  if (typeof raw !== 'object' || raw === null) return undefined;
  return findAt((raw as RawForm)[name], rest);
};

/** What is wrong with what was typed or tapped so far? What has not been touched is not wrong yet. */
export function listMistakes(
  form: Form,
  raw: RawForm,
  context: Omit<ReadingContext, 'isPartial'>,
): readonly FieldRefusal[] {
  const read = readForm(form, raw, { ...context, isPartial: true });
  return read.ok ? [] : read.error.filter(({ path }) => findAt(raw, path.split('.')) !== undefined);
}

const topOf = (path: string): string => path.split('.')[0] ?? path;

/** The rows of a list that read well; none at all, and the list is not answered rather than empty. */
const keepRows = (raw: Raw, name: string, refusals: readonly FieldRefusal[]): Raw => {
  const rows = Array.isArray(raw) ? (raw as readonly RawForm[]) : [];
  const good = rows.filter(
    (_, row) => !refusals.some(({ path }) => `${path}.`.startsWith(`${name}.${row}.`)),
  );
  return good.length === 0 ? undefined : good;
};

/**
 * What of this may be kept while the rest is still wrong?
 * A field that does not read is left out, a list keeps its good rows. Where leaving out would mean the default, the
 * answer that was kept before stands. Checked in tests/src/parts/draft.test.tsx.
 */
export function takeReadable(
  form: Form,
  raw: RawForm,
  kept: RawForm,
  context: Omit<ReadingContext, 'isPartial'>,
): RawForm {
  const read = readForm(form, raw, { ...context, isPartial: true });
  if (read.ok) return raw;
  const bad = new Set(read.error.map(({ path }) => topOf(path)));
  return Object.fromEntries(
    Object.entries(form).map(([name, question]) => {
      if (!bad.has(name)) return [name, raw[name]];
      if (question.kind === 'list') return [name, keepRows(raw[name], name, read.error)];
      return [name, 'or' in question ? kept[name] : undefined];
    }),
  );
}
