import crc32 from 'crc-32';
import type { Json } from './json';

/** One readable line: its place in the log, counted from 0, and the JSON text it carries. */
export interface ReadLine {
  readonly seq: number;
  readonly json: string;
}

/**
 * How is one entry written down?
 * `checksum seq json` without the newline, the same in both copies. The checksum is CRC-32 over `seq json`
 * in UTF-8, as 8 lower-case hex digits. Checked in tests/src/storage/line.test.ts.
 */
export const encodeLine = (seq: number, json: string): string => {
  const body = `${seq} ${json}`;
  return `${readChecksum(body)} ${body}`;
};

/**
 * What does this line say, if nothing in it was changed?
 * null when the checksum or the shape is wrong; the JSON itself is parsed by `readEntry`.
 * Checked in tests/src/storage/line.test.ts, one flipped bit after the other.
 */
export const decodeLine = (line: string): ReadLine | null => {
  const parts = /^([0-9a-f]{8}) ((0|[1-9][0-9]{0,14}) ([^\n]+))$/u.exec(line);
  const [, checksum, body, seq, json] = parts ?? [];
  if (body === undefined || json === undefined || checksum !== readChecksum(body)) return null;
  return isJson(json) ? { seq: Number(seq), json } : null;
};

/** Which JSON does this line carry? For lines that `decodeLine` has accepted; throws for what was never a line. */
export const readJson = (line: string): string => {
  const from = line.indexOf(' ', line.indexOf(' ') + 1);
  if (from === -1) throw new TypeError('a line was used that had not been accepted');
  return line.slice(from + 1);
};

/** What was kept in this line? For lines that `decodeLine` has accepted; throws for any other. */
export const readEntry = (line: string): Json => {
  if (decodeLine(line) === null) throw new TypeError('a line was used that had not been accepted');
  return JSON.parse(readJson(line)) as Json;
};

/** CRC-32 of a text in UTF-8, as 8 lower-case hex digits. */
export const readChecksum = (text: string): string => toHex(crc32.str(text));

/** CRC-32 of bytes, as 8 lower-case hex digits. */
export const readByteChecksum = (bytes: Uint8Array): string => toHex(crc32.buf(bytes));

const toHex = (signed: number): string => (signed >>> 0).toString(16).padStart(8, '0');

const isJson = (text: string): boolean => {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
};
