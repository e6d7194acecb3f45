import { untrack } from 'solid-js';
import type { RawForm } from '../../shared/records/readForm';
import type { Settings } from '../../shared/records/settings';
import { createDraft, type Draft } from '../parts/form/draft';
import { type Lasting, lasting } from './lastingDrafts';

/** Half-filled forms of this window, by name: she goes to another chair and finds hers again as she left it. */
const kept = new Map<string, RawForm>();

/** A draft that outlives its screen, until it is taken. */
export interface KeptDraft extends Draft {
  readonly drop: () => void;
}

/**
 * The draft of this name as it was left, or a new one with these contents. A name begins with whose it is, and a
 * slash. Half a figure is in the units in which it was typed: under other units the draft begins anew. With `store` it
 * outlives a reload of the page too.
 * Checked in tests/src/screens/askStep.test.tsx and strandTest/strandScreens.test.tsx.
 */
export function createKeptDraft(
  name: string,
  initial: RawForm,
  { units }: Settings,
  store?: Lasting,
): KeptDraft {
  const key = untrack(() => [name, ...Object.values(units)].join('/'));
  const draft = createDraft(kept.get(key) ?? store?.read(key) ?? initial);
  const drop = () => {
    kept.delete(key);
    store?.forget(key);
  };
  return {
    raw: draft.raw,
    set: (field, value) => {
      draft.set(field, value);
      kept.set(key, draft.raw());
      store?.keep(key, draft.raw());
    },
    begin: (raw) => {
      drop();
      draft.begin(raw);
    },
    drop,
  };
}

/** Forgets what was half filled in for a consultation that is closed. */
export function dropDrafts(id: string): void {
  for (const key of kept.keys()) if (key.startsWith(`${id}/`)) kept.delete(key);
  lasting.forget(`${id}/`);
}
