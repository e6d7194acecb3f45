import type { RawForm } from '../../shared/records/readForm';
import { createDraft, type Draft } from '../parts/form/draft';

/** Half-filled forms of this window, by name: she goes to another chair and finds hers again as she left it. */
const kept = new Map<string, RawForm>();

/** A draft that outlives its screen, until it is taken. */
export interface KeptDraft extends Draft {
  readonly drop: () => void;
}

/**
 * The draft of this name as it was left, or a new one with these contents.
 * Checked in tests/src/screens/strandTest/strandScreens.test.tsx.
 */
export function createKeptDraft(name: string, initial: RawForm): KeptDraft {
  const draft = createDraft(kept.get(name) ?? initial);
  return {
    raw: draft.raw,
    set: (field, value) => {
      draft.set(field, value);
      kept.set(name, draft.raw());
    },
    begin: (raw) => {
      kept.delete(name);
      draft.begin(raw);
    },
    drop: () => kept.delete(name),
  };
}
