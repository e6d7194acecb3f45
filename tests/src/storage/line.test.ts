import { describe, expect, it } from 'vitest';
import { type Json, writeJson } from '../../../src/storage/json';
import { decodeLine, encodeLine, readByteChecksum, readChecksum, readEntry } from '../../../src/storage/line';
import { isLogName } from '../../../src/storage/logName';
import { lineAt } from './tablet';

describe('a line', () => {
  it('has the checksum CBF43926 for 123456789', () => {
    // from memory: R. N. Williams, A Painless Guide to CRC Error Detection Algorithms, 1993 (check value of CRC-32)
    expect(readChecksum('123456789')).toBe('cbf43926');
  });

  it('takes its checksum over UTF-8, also beyond the basic plane', () => {
    const text = '7 "é – 漢 🟡"';
    expect(readChecksum(text)).toBe(readByteChecksum(new TextEncoder().encode(text)));
  });

  it('is the checksum, the place and the JSON, on one line', () => {
    expect(encodeLine(3, '{"a":1}')).toBe(`${readChecksum('3 {"a":1}')} 3 {"a":1}`);
  });

  it.each<Json>([
    null,
    true,
    0,
    -1.5e-7,
    '',
    'two\nlines\r\u2028\u2029',
    '\ud800 alone',
    '\ufeff',
    [],
    {},
    [[1], { '': [null] }],
    JSON.parse('{"__proto__":{"polluted":true},"10":1,"2":2}') as Json,
  ])('gives back what was written: %j', (entry) => {
    const json = writeJson(entry);
    const line = encodeLine(12, json ?? '');
    expect(line).not.toContain('\n');
    expect(decodeLine(line)?.seq).toBe(12);
    expect(readEntry(line)).toStrictEqual(entry);
    expect(JSON.stringify(readEntry(line))).toBe(json);
  });

  it('is refused with any one bit changed', () => {
    const bytes = new TextEncoder().encode(lineAt(4));
    for (let bit = 0; bit < bytes.length * 8; bit += 1) {
      const changed = bytes.slice();
      changed[bit >> 3] = (changed[bit >> 3] ?? 0) ^ (1 << (bit & 7));
      expect(decodeLine(new TextDecoder().decode(changed)), `bit ${bit}`).toBeNull();
    }
  });

  it.each([
    ['no JSON', encodeLine(0, '{"a":')],
    ['a newline inside', encodeLine(0, '{\n}')],
    ['nothing after the place', `${readChecksum('0 ')} 0 `],
    ['a place with a leading zero', `${readChecksum('01 {}')} 01 {}`],
    ['a place below zero', encodeLine(-1, '{}')],
    ['a capital checksum', encodeLine(0, '"b"').toUpperCase()],
    ['nothing at all', ''],
  ])('is refused with %s, even when the checksum is right', (_, line) => {
    expect(decodeLine(line)).toBeNull();
  });

  it('is not made of what JSON would change', () => {
    const circle: Record<string, unknown> = {};
    circle.self = circle;
    for (const lossy of [Number.NaN, Number.POSITIVE_INFINITY, undefined, { a: undefined }, [1n], circle]) {
      expect(writeJson(lossy as Json)).toBeNull();
    }
  });
});

describe('the name of a log', () => {
  it.each(['settings', 'open-k3f9x2', 'closed-2026-11', 'open-aB9'])('may be %s', (name) => {
    expect(isLogName(name)).toBe(true);
  });

  it.each([
    '',
    'Open',
    'open-',
    '-open',
    'open--a',
    'open a',
    '../settings',
    'a.b',
    'a:b',
    'a/b',
    'open-é',
    'a\n',
  ])('may not be %j', (name) => {
    expect(isLogName(name)).toBe(false);
  });
});
