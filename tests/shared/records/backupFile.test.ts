import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { BACKUP_VERSION, readBackup, writeBackup } from '../../../shared/records/backupFile';
import { MODEL_VERSION } from '../../../shared/records/event';
import { holds } from '../seeded';

const logs = new Map<string, readonly unknown[]>([
  ['settings', [{ settings: { chairs: 8 } }]],
  ['open-a1b2', [{ type: 'OPENED' }, { type: 'ANSWERED', payload: { words: 'two\nlines, "é漢"' } }]],
]);
const made = { madeAtMs: 7, isDemo: false };
const write = (from: ReadonlyMap<string, readonly unknown[]> = logs) => [...writeBackup(from, made)].join('');
const refusalOf = (text: string) => {
  const read = readBackup(text);
  return read.ok ? 'read' : read.error;
};

describe('a backup', () => {
  it('comes back as it was, whatever stands in its logs', () => {
    const name = fc.string({ minLength: 1 });
    const entries = fc.array(
      fc.jsonValue().map((value) => JSON.parse(JSON.stringify(value)) as unknown),
      { minLength: 1, maxLength: 4 },
    );
    holds(
      fc.property(fc.array(fc.tuple(name, entries), { maxLength: 5 }), (all) => {
        const each = new Map(all);
        expect(readBackup(write(each))).toEqual({ ok: true, value: { logs: each, made } });
      }),
    );
  });

  it('that was cut off anywhere is refused whole', () => {
    const text = write();
    for (let length = 0; length < text.length; length += 1) {
      expect(['cutOff', 'anotherProgram'], `at ${length}`).toContain(refusalOf(text.slice(0, length)));
    }
  });

  it('of which any one letter was changed is refused whole', () => {
    const text = write();
    for (let at = 0; at < text.length; at += 1) {
      const changed = `${text.slice(0, at)}${text[at] === 'x' ? 'y' : 'x'}${text.slice(at + 1)}`;
      expect(refusalOf(changed), `at ${at}`).not.toBe('read');
    }
  });

  it('of which a line was left out, or told twice, is damaged', () => {
    const lines = write().split('\n');
    expect(refusalOf([...lines.slice(0, 2), ...lines.slice(3)].join('\n'))).toBe('damaged');
    expect(refusalOf([...lines.slice(0, 2), lines[1], ...lines.slice(2)].join('\n'))).toBe('damaged');
  });

  it.each([
    ['nothing', ''],
    ['a CSV', 'Date,Client\r\n2026-11-12,Q.F.\r\n'],
    ['a day of this station', '{"v":2,"day":"2026-11-12"}\n'],
  ])('%s is another program’s', (_, text) => expect(refusalOf(text)).toBe('anotherProgram'));

  it('of a newer edition is refused as newer, before its check sum is asked', () => {
    const head = { strandproof: 'backup', v: BACKUP_VERSION, modelVersion: MODEL_VERSION, ...made };
    const text = write();
    const withHead = (change: object) =>
      [JSON.stringify({ ...head, ...change }), ...text.split('\n').slice(1)].join('\n');
    expect(refusalOf(withHead({}))).toBe('read');
    expect(refusalOf(withHead({ v: BACKUP_VERSION + 1 }))).toBe('newer');
    expect(refusalOf(withHead({ modelVersion: MODEL_VERSION + 1 }))).toBe('newer');
  });
});
