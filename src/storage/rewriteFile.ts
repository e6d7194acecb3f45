import { encodeLine, readEntry } from './line';
import { readJournal } from './readJournal';

/** Lines as a file holds them. */
export const toBytes = (lines: readonly string[]): Uint8Array =>
  new TextEncoder().encode(lines.map((line) => `${line}\n`).join(''));

/** What a log is about to be, as a file: first a line of its own that says how many follow. */
export const writeRewrite = (lines: readonly string[]): Uint8Array =>
  toBytes([encodeLine(0, String(lines.length)), ...lines]);

/**
 * What is the log about to be, by this file? null when the file is not whole: the power failed while it was written,
 * and neither copy was touched yet. Checked in tests/src/storage/rewrite.test.ts, cut at every byte.
 */
export const readRewrite = (bytes: Uint8Array): readonly string[] | null => {
  const headEnd = bytes.indexOf(NEWLINE) + 1;
  const [head] = readJournal(bytes.subarray(0, headEnd)).lines;
  if (head === undefined) return null;
  const { lines, fault, tailBytes } = readJournal(bytes.subarray(headEnd));
  return fault === null && tailBytes === 0 && lines.length === readEntry(head) ? lines : null;
};

const NEWLINE = 0x0a;
