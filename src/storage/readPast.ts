import { accept, type Result } from '../../shared/result';
import type { Copies } from './copies';
import type { CopyFailure } from './copyFailure';
import { readJson } from './line';
import { type Packed, pack } from './packed';
import { type Settled, settleLog } from './settleLog';

/** A log that was let wait, settled, with its entries packed. */
export interface Past extends Omit<Settled, 'lines'> {
  readonly packed: Packed;
}

/** Is this the answer that holds a packed log? */
export const isPast = (value: unknown): value is Past =>
  typeof value === 'object' && value !== null && 'packed' in value;

/** Whoever reads what was let wait, until there is nothing left to read. */
export interface PastReader {
  readonly read: ReadPast;
  readonly close: () => void;
}

/** Reads a log that was let wait, from both copies; refused when neither answers. */
export type ReadPast = (name: string) => Promise<Result<Past, CopyFailure>>;

/**
 * What is this log that was let wait? Both copies are read, compared and mended as at a start, and the entries are kept as
 * text. The journal lets go of the file: another worker writes it. Checked in tests/src/storage/storeLater.test.ts.
 */
export const readPastFrom =
  (copies: Copies): ReadPast =>
  async (name) => {
    const fromJournal = await copies.journal.read(name);
    const known = fromJournal.ok ? fromJournal.value?.lines : undefined;
    const fromIndex = await copies.index.read(name, known);
    if (!fromJournal.ok && !fromIndex.ok) return fromJournal;
    const { lines, ...said } = await settleLog(copies, name, fromJournal, fromIndex);
    return accept({ ...said, packed: pack(lines.map(readJson)) });
  };
