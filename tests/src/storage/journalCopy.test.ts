import { describe, expect, it } from 'vitest';
import { keepAside } from '../../../src/storage/asideFiles';
import { makeJournalCopy } from '../../../src/storage/journalCopy';
import { makeMemoryDisk, makeMemoryFiles } from './memoryFiles';
import { lineAt, linesUpTo, toBytes } from './tablet';

const bytes = toBytes(linesUpTo(2));

describe('the journal', () => {
  it('appends lines behind what is there and reads them back', async () => {
    const journal = makeJournalCopy(makeMemoryFiles(makeMemoryDisk()));
    await journal.append('settings', 0, linesUpTo(2));
    await journal.append('settings', 2, [lineAt(2)]);
    expect(await journal.read('settings')).toStrictEqual({
      ok: true,
      value: { lines: linesUpTo(3), fault: null, tailBytes: 0, claimed: 3 },
    });
    expect(await journal.read('open-a')).toStrictEqual({ ok: true, value: null });
  });

  it('cuts a tail once, and has nothing to cut from a whole one', async () => {
    const disk = makeMemoryDisk();
    disk.journals.set('settings', bytes.slice(0, -3));
    const journal = makeJournalCopy(makeMemoryFiles(disk));
    const end = toBytes(linesUpTo(1)).length;
    const cut = await journal.cutTail('settings');
    expect(cut).toMatchObject({ ok: true, value: { name: 'settings', copy: 'journal', reason: 'tornTail' } });
    expect(disk.journals.get('settings')).toStrictEqual(bytes.slice(0, end));
    expect([...disk.aside.values()]).toStrictEqual([bytes.slice(end, -3)]);
    expect(await journal.cutTail('settings')).toStrictEqual({ ok: true, value: null });
    expect(await journal.cutTail('open-a')).toStrictEqual({ ok: true, value: null });
  });

  it('does not take a foreign file for a mark or for something set aside', async () => {
    const disk = makeMemoryDisk();
    for (const file of ['a', 'a.b', 'settings.nonsense', 'settings.gap.x.y']) disk.marks.set(file, bytes);
    for (const file of ['a', 'settings.gap', 'settings.nonsense.0-1']) disk.aside.set(file, bytes);
    const journal = makeJournalCopy(makeMemoryFiles(disk));
    expect(await journal.listMarks()).toStrictEqual({ ok: true, value: [] });
    expect(await journal.listAside()).toStrictEqual({ ok: true, value: [] });
  });
});

describe('keeping bytes aside', () => {
  it('twice leaves one file', async () => {
    const disk = makeMemoryDisk();
    const files = makeMemoryFiles(disk);
    const first = await keepAside(files, 'settings', 'gap', bytes);
    expect(await keepAside(files, 'settings', 'gap', bytes)).toStrictEqual(first);
    expect([...disk.aside]).toStrictEqual([[first.kept, bytes]]);
  });

  it('finishes what was broken off, at every byte', async () => {
    for (let begun = 0; begun <= bytes.length; begun += 1) {
      const disk = makeMemoryDisk();
      const files = makeMemoryFiles(disk);
      const { kept } = await keepAside(files, 'settings', 'gap', bytes);
      disk.aside.set(kept, bytes.slice(0, begun));
      await keepAside(files, 'settings', 'gap', bytes);
      expect([...disk.aside]).toStrictEqual([[kept, bytes]]);
    }
  });

  it('never writes over other bytes that stand under the same name', async () => {
    const disk = makeMemoryDisk();
    const files = makeMemoryFiles(disk);
    const { kept } = await keepAside(files, 'settings', 'gap', bytes);
    const other = new Uint8Array([1, 2, 3]);
    disk.aside.set(kept, other);
    const second = await keepAside(files, 'settings', 'gap', bytes);
    expect(second.kept).not.toBe(kept);
    expect(disk.aside.get(kept)).toStrictEqual(other);
    expect(disk.aside.get(second.kept)).toStrictEqual(bytes);
  });
});
