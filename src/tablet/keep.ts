import * as v from 'valibot';

/** Where this tablet keeps what is about itself, and a bowl that stands on the scale; a browser may refuse it. */
export type Kept = Pick<globalThis.Storage, 'getItem' | 'setItem'>;

/**
 * What was kept under this name, as this schema takes it; null where nothing was, or nothing that can be read.
 * Checked in tests/src/tablet/keep.test.ts.
 */
export function readKept<S extends v.GenericSchema>(
  kept: Kept | undefined,
  key: string,
  schema: S,
): v.InferOutput<S> | null {
  try {
    const read = v.safeParse(schema, JSON.parse(kept?.getItem(key) ?? 'null'));
    return read.success ? read.output : null;
  } catch {
    return null;
  }
}

/** This tablet's own store, asked for at each use, since a browser may refuse it by throwing. */
export const ofTablet: Kept = {
  getItem: (key) => localStorage.getItem(key),
  setItem: (key, value) => localStorage.setItem(key, value),
};

/** Full or forbidden: it holds until the page is left, and is asked for again. */
export function keep(kept: Kept | undefined, key: string, value: unknown): void {
  try {
    kept?.setItem(key, JSON.stringify(value));
  } catch {
    // No record stands here, and nothing is judged by it.
  }
}
