import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null;

/**
 * The one text of this content, whoever writes it: names in order, no spaces (published: RFC 8785, whose order of names by
 * UTF-16 units and whose numbers and strings are those of JavaScript). What JSON leaves out is left out. A half of a sign
 * outside the basic plane stands as its number, where RFC 8785 refuses it: what somebody typed is never lost.
 * Checked in tests/shared/records/documents/canonical.test.ts.
 */
export function writeCanonical(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map((each) => writeCanonical(each ?? null)).join(',')}]`;
  if (!isObject(value)) return JSON.stringify(value ?? null);
  const names = Object.keys(value)
    .filter((name) => value[name] !== undefined)
    .sort();
  return `{${names.map((name) => `${JSON.stringify(name)}:${writeCanonical(value[name])}`).join(',')}}`;
}

/** SHA-256 of the content's one text in UTF-8, 64 hex digits (published: FIPS 180-4). */
export const digest = (value: unknown): string => bytesToHex(sha256(utf8ToBytes(writeCanonical(value))));
