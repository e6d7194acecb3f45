import type { Told } from './told';

/**
 * How this tablet and its station are, for whoever looks after them: JSON with the fields of `Told`, times as ISO 8601 in
 * UTC. Described in docs/support.md. Nothing of a client, a record, the shelf or the staff gets so far: checked in
 * tests/src/screens/diagnosis/supportFile.test.tsx.
 */
export const writeSupportFile = (told: Told): string =>
  `${JSON.stringify(
    {
      kind: 'strandproof-support',
      version: 1,
      ...told,
      atMs: undefined,
      at: sayIso(told.atMs),
      heard: told.heard === null ? null : { answer: told.heard.answer, at: sayIso(told.heard.atMs) },
      lastBackupAtMs: undefined,
      lastBackupAt: told.lastBackupAtMs === null ? null : sayIso(told.lastBackupAtMs),
    },
    null,
    2,
  )}\n`;

const sayIso = (atMs: number): string => new Date(atMs).toISOString();
