import * as v from 'valibot';
import { type Kept, keep, readKept } from './keep';

const KEY = 'strandproof-last-backup';
const schema = v.object({ atMs: v.pipe(v.number(), v.safeInteger()) });

/** When was the whole station last handed out as a file here? null: never that this tablet knows of. Checked in tests/src/tablet/tabletFacts.test.ts. */
export const readLastBackupAtMs = (kept: Kept | undefined): number | null =>
  readKept(kept, KEY, schema)?.atMs ?? null;

/** It was handed out now; whether the file was kept anywhere is not for the tablet to know. */
export const keepLastBackupAtMs = (kept: Kept | undefined, atMs: number): void => keep(kept, KEY, { atMs });
