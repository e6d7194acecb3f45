/**
 * May a log be called this?
 * Lower-case word, then parts of letters and digits joined by hyphens: `settings`, `open-k3f9x2`, `closed-2026-11`.
 * Anything else is refused, so that a name is at once a safe file name and a safe key.
 * Checked in tests/src/storage/line.test.ts.
 */
export const isLogName = (name: string): boolean => /^[a-z]+(-[A-Za-z0-9]+)*$/.test(name);

/** Does this name begin so, and may its log come later? null: none may. */
export const isLater = (name: string, begin: string | null): boolean =>
  begin !== null && name.startsWith(begin);
