export const SETTINGS_LOG = 'settings';
/** What was erased, by id: it grows by append only, and is never erased itself. */
export const ERASED_LOG = 'erased';
export const OPEN = 'open-';
export const CLOSED = 'closed-';
export const SKIN_TEST = 'skintest-';

/** The log of an open consultation. */
export const nameOpenLog = (id: string): string => `${OPEN}${id}`;

/** The log of a skin test. */
export const nameSkinTestLog = (id: string): string => `${SKIN_TEST}${id}`;

/** The log of all that closed in the month of this moment (UTC): it grows by append, and an erasing alone rewrites it. */
export const nameClosedLog = (atMs: number): string => `${CLOSED}${new Date(atMs).toISOString().slice(0, 7)}`;
