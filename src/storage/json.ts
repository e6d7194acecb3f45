/** What can be kept: plain JSON. What JSON would change on the way (NaN, undefined, dates) is refused when it is written. */
export type Json = null | boolean | number | string | readonly Json[] | { readonly [key: string]: Json };

/**
 * What would this look like written down?
 * The JSON text, on one line whatever it holds; null when JSON cannot carry it unchanged
 * (a number that is not finite, an undefined part, a circle). Checked in tests/src/storage/line.test.ts.
 */
export const writeJson = (entry: Json): string | null => {
  try {
    const text = JSON.stringify(entry, refuseLossy) as string | undefined;
    return text ?? null;
  } catch {
    return null;
  }
};

const refuseLossy = (key: string, value: unknown): unknown => {
  const isLossy = typeof value === 'number' ? !Number.isFinite(value) : !carried.has(typeof value);
  if (isLossy) throw new TypeError(`JSON cannot carry ${typeof value} at "${key}"`);
  return value;
};

const carried: ReadonlySet<string> = new Set(['object', 'string', 'boolean']);
