import { accept, type Result } from '../../shared/result';
import { type AsideNote, type AsideReason, isAsideReason } from './asideNote';
import type { CopyContents } from './copies';
import type { CopyFailure } from './copyFailure';
import { type CopyReading, countInOrder } from './copyReading';
import { decodeLine } from './line';
import { isLogName } from './logName';

/** A key and a value as the index holds them: anything, until it has been read. */
export type IndexPair = readonly [key: unknown, value: unknown];

/** The key of one entry: `log:<name>:<place, 8 digits>`. */
export const writeKey = (name: string, seq: number): string => `log:${name}:${String(seq).padStart(8, '0')}`;

/** The two ends between which every key of one log lies. */
export const readKeyEnds = (name: string): readonly [string, string] => [
  `log:${name}:`,
  `log:${name}:\uffff`,
];

/**
 * What does the index hold of one log?
 * null when nothing. A value that is no good line, or stands under another place than its own, is a fault. `known`: lines
 * that were found good in the other copy, which are not looked into twice. Checked in tests/src/storage/readIndex.test.ts.
 */
export const readIndexLog = (
  pairs: readonly IndexPair[],
  known: readonly string[] = [],
): CopyReading | null => {
  if (pairs.length === 0) return null;
  const places = pairs.map(([key, value]) => ({
    seq: readPlace(key),
    text: typeof value === 'string' ? value : '',
  }));
  places.sort((a, b) => a.seq - b.seq);
  const firstBad = places.findIndex(({ seq, text }) => text !== known[seq] && decodeLine(text)?.seq !== seq);
  const run = firstBad === -1 ? places : places.slice(0, firstBad);
  const { count, fault } = countInOrder(run.map(({ seq }) => seq));
  const highest = places.reduce((high, { seq }) => Math.max(high, seq), -1);
  return {
    lines: run.slice(0, count).map(({ text }) => text),
    fault: fault ?? (firstBad === -1 ? null : 'badLine'),
    tailBytes: 0,
    claimed: Math.max(highest + 1, pairs.length),
  };
};

/**
 * What does the index hold?
 * Every log by name, and the keys that name none. Checked in tests/src/storage/readIndex.test.ts.
 */
export const readIndexAll = (pairs: readonly IndexPair[]): Omit<CopyContents, 'later'> => {
  const strangers: string[] = [];
  const byName = new Map<string, IndexPair[]>();
  for (const pair of pairs) {
    const name = readKeyName(pair[0]);
    const held = name === null ? undefined : byName.get(name);
    if (held !== undefined) held.push(pair);
    else if (name !== null) byName.set(name, [pair]);
    else if (readAsideKey(pair[0]) === null) strangers.push(String(pair[0]));
  }
  const readings = new Map<string, Result<CopyReading, CopyFailure>>();
  for (const [name, held] of byName) {
    const reading = readIndexLog(held);
    if (reading !== null) readings.set(name, accept(reading));
  }
  return { readings, strangers };
};

/** The key of what was set aside: `aside:<name>:<reason>:<turn>`. */
export const writeAsideKey = (name: string, reason: AsideReason, turn: number): string =>
  `aside:${name}:${reason}:${String(turn).padStart(4, '0')}`;

/** What was set aside under this key? null when it is no such key. */
export const readAsideKey = (key: unknown): AsideNote | null => {
  const [kept, name, reason] = (typeof key === 'string' && /^aside:([^:]+):([^:]+):[0-9]+$/.exec(key)) || [];
  if (kept === undefined || name === undefined || reason === undefined) return null;
  return isAsideReason(reason) ? { name, copy: 'index', reason, kept } : null;
};

/** Which log does this key belong to? null when it names none. */
export const readKeyName = (key: unknown): string | null => {
  const name = typeof key === 'string' ? /^log:([^:]*):/.exec(key)?.[1] : undefined;
  return name !== undefined && isLogName(name) ? name : null;
};

const readPlace = (key: unknown): number => {
  const digits = typeof key === 'string' ? /^log:[^:]*:([0-9]{8,15})$/.exec(key)?.[1] : undefined;
  return digits === undefined ? -1 : Number(digits);
};
