export const SETTINGS_LOG = 'settings';
/** What was erased, by id: it grows by append only, and is never erased itself. */
export const ERASED_LOG = 'erased';
/** What other stations tell and this one cannot judge, document by document. */
export const UNJUDGED_LOG = 'unjudged';
export const OPEN = 'open-';
export const CLOSED = 'closed-';
export const SKIN_TEST = 'skintest-';
export const BENCH = 'bench-';

/** The log of an open consultation. */
export const nameOpenLog = (id: string): string => `${OPEN}${id}`;

/** The log of a skin test; from the second on it is numbered, where several stations tell it otherwise. */
export const nameSkinTestLog = (id: string, telling = 1): string =>
  `${SKIN_TEST}${id}${telling === 1 ? '' : `-${telling}`}`;

/** The log of a trial at the bench. */
export const nameBenchLog = (id: string): string => `${BENCH}${id}`;

/** Whose log is this, of an open consultation, a skin test or a bench trial? */
export const readLogId = (name: string): string => name.split('-')[1] ?? '';

/** The log of all that closed in the month of this moment (UTC): it grows by append, and an erasing alone rewrites it. */
export const nameClosedLog = (atMs: number): string => `${CLOSED}${new Date(atMs).toISOString().slice(0, 7)}`;
