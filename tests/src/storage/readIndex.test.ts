import { describe, expect, it } from 'vitest';
import { accept } from '../../../shared/result';
import { type IndexPair, readIndexAll, readIndexLog, writeKey } from '../../../src/storage/readIndex';
import { lineAt, linesUpTo } from './tablet';

const pairs = (name: string, lines: readonly string[]): readonly IndexPair[] =>
  lines.map((line, seq) => [writeKey(name, seq), line]);

describe('reading the index', () => {
  it('writes places so that keys stand in their order', () => {
    expect(writeKey('open-a1', 7)).toBe('log:open-a1:00000007');
  });

  it('finds every line of a log', () => {
    expect(readIndexLog(pairs('settings', linesUpTo(3)))).toStrictEqual({
      lines: linesUpTo(3),
      fault: null,
      tailBytes: 0,
      claimed: 3,
    });
  });

  it('knows nothing from an empty log', () => {
    expect(readIndexLog([])).toBeNull();
  });

  it('calls a value that was changed a fault, also the last one', () => {
    const held = pairs('settings', [lineAt(0), lineAt(1).replace('gold', 'copper')]);
    expect(readIndexLog(held)).toMatchObject({ lines: [lineAt(0)], fault: 'badLine', claimed: 2 });
  });

  it.each<unknown>([undefined, null, 4, {}, { toString: 1 }])(
    'calls a value that is no text a fault: %j',
    (value) => {
      expect(readIndexLog([[writeKey('settings', 0), value]])).toMatchObject({ lines: [], fault: 'badLine' });
    },
  );

  it('calls a line under the place of another a fault', () => {
    expect(readIndexLog([[writeKey('settings', 0), lineAt(1)]])).toMatchObject({
      lines: [],
      fault: 'badLine',
    });
  });

  it('calls a missing place a gap', () => {
    const held: readonly IndexPair[] = [
      [writeKey('settings', 0), lineAt(0)],
      [writeKey('settings', 2), lineAt(2)],
    ];
    expect(readIndexLog(held)).toMatchObject({ lines: [lineAt(0)], fault: 'gap', claimed: 3 });
  });

  it('calls a key without a place a fault of its log', () => {
    expect(readIndexLog([...pairs('settings', linesUpTo(1)), ['log:settings:x', lineAt(1)]])?.fault).toBe(
      'badLine',
    );
  });

  it('tells logs apart, and names keys that belong to none', () => {
    const { readings, strangers } = readIndexAll([
      ...pairs('open-a', linesUpTo(1)),
      ...pairs('open-ab', linesUpTo(2)),
      ['aside:open-c:gap:0001', []],
      ['log:Ä:00000000', ''],
      [5, ''],
      ['else', ''],
    ]);
    expect([...readings.keys()]).toStrictEqual(['open-a', 'open-ab']);
    expect(readings.get('open-ab')).toStrictEqual(accept(readIndexLog(pairs('open-ab', linesUpTo(2)))));
    expect(strangers).toStrictEqual(['log:Ä:00000000', '5', 'else']);
  });
});
