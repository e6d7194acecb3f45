import { type CopyReading, countInOrder } from './copyReading';
import { decodeLine } from './line';

/** A journal as it was read, and how many bytes from its start hold the good lines. */
export interface JournalReading extends CopyReading {
  readonly goodBytes: number;
}

const NEWLINE = 0x0a;

/**
 * What does this journal file hold?
 * Every good line in order. What follows the last good line is a tail (a write broken off); a bad line with
 * good ones after it, a place missing or a place twice is a fault. Never throws, whatever the bytes.
 * Checked in tests/src/storage/readJournal.test.ts, cut at every byte and with every bit flipped.
 */
export const readJournal = (bytes: Uint8Array): JournalReading => {
  const pieces = splitLines(bytes);
  const last = pieces.findLastIndex((piece) => piece.seq !== null);
  const upToLast = pieces.slice(0, last + 1);
  const goodBytes = upToLast.at(-1)?.end ?? 0;
  const firstBad = upToLast.findIndex((piece) => piece.seq === null);
  const run = firstBad === -1 ? upToLast : upToLast.slice(0, firstBad);
  const seqs = run.map((piece) => piece.seq as number);
  const { count, fault } = countInOrder(seqs);
  const tailBytes = bytes.length - goodBytes;
  const highest = upToLast.reduce((high, piece) => Math.max(high, piece.seq ?? -1), -1);
  return {
    lines: run.slice(0, count).map((piece) => piece.text),
    fault: fault ?? (firstBad === -1 ? null : 'badLine'),
    tailBytes,
    claimed: highest + 1 + (tailBytes > 0 ? 1 : 0),
    goodBytes,
  };
};

/** A stretch of bytes up to and with its newline; `seq` null when it is no good line. */
interface Piece {
  readonly text: string;
  readonly seq: number | null;
  readonly end: number;
}

const splitLines = (bytes: Uint8Array): readonly Piece[] => {
  const pieces: Piece[] = [];
  for (let start = 0; start < bytes.length; ) {
    const newline = bytes.indexOf(NEWLINE, start);
    const end = newline === -1 ? bytes.length : newline + 1;
    const text = newline === -1 ? null : readUtf8(bytes.subarray(start, newline));
    pieces.push({ text: text ?? '', seq: text === null ? null : (decodeLine(text)?.seq ?? null), end });
    start = end;
  }
  return pieces;
};

const utf8 = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true });

const readUtf8 = (bytes: Uint8Array): string | null => {
  try {
    return utf8.decode(bytes);
  } catch {
    return null;
  }
};
