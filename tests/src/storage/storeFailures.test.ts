import { describe, expect, it } from 'vitest';
import { refuse } from '../../../shared/result';
import type { IndexCopy, JournalCopy } from '../../../src/storage/copies';
import { type CopyFailureKind, nameFailure } from '../../../src/storage/copyFailure';
import { makeJournalCopy } from '../../../src/storage/journalCopy';
import { makeMemoryFiles } from './memoryFiles';
import { makePower } from './power';
import { entriesUpTo, entryAt, lineAt, linesUpTo, makeFilledTablet, switchOn, toBytes } from './tablet';

const name = 'open-k3f9x2';

/** A fault that can be put right: while it is there, every named call of a copy answers with it. */
interface Fault {
  error: unknown;
}

const failing = <C extends JournalCopy | IndexCopy>(
  copy: C,
  of: 'journal' | 'index',
  methods: readonly (keyof C & string)[],
  fault: Fault,
): C => {
  const faulty = methods.map((method) => {
    const real = copy[method] as (...args: readonly unknown[]) => unknown;
    return [
      method,
      async (...args: readonly unknown[]) =>
        fault.error === null ? real(...args) : refuse(nameFailure(of, fault.error)),
    ];
  });
  return { ...copy, ...Object.fromEntries(faulty) };
};

const quota = new DOMException('no room', 'QuotaExceededError');
const locked = new DOMException('held', 'NoModificationAllowedError');

describe('a write that fails', () => {
  it.each<[string, unknown, CopyFailureKind]>([
    ['no room', quota, 'quotaExceeded'],
    ['a file held elsewhere', locked, 'lockedElsewhere'],
    ['anything else', new Error('?'), 'journalUnavailable'],
    ['nothing at all', null as unknown, 'journalUnavailable'],
  ])('is named: %s', (_, error, kind) => {
    expect(nameFailure('journal', error).kind).toBe(kind);
  });

  it('in the journal is reported, holds the log up, and reload tells that nothing is held', async () => {
    const fault: Fault = { error: null };
    const { store } = switchOn(await makeFilledTablet(name, 2), makePower(), ({ journal }) => ({
      journal: failing(journal, 'journal', ['append'], fault),
    }));
    await store.restore();
    fault.error = quota;
    const failed = { ok: false, error: { name, copy: 'journal', kind: 'quotaExceeded' } };
    expect(await store.append(name, 2, entryAt(2))).toMatchObject(failed);
    fault.error = null;
    expect(await store.append(name, 2, entryAt(2)), 'not before a reload').toMatchObject(failed);
    expect((await store.append('settings', 0, 1)).ok, 'another log goes on').toBe(true);
    expect(await store.reload(name)).toMatchObject({
      ok: true,
      value: { entries: entriesUpTo(2), mended: [] },
    });
    expect((await store.append(name, 2, entryAt(2))).ok).toBe(true);
  });

  it('half in the journal is cut and kept aside by reload, at every byte of the line', async () => {
    const size = toBytes([lineAt(2)]).length;
    for (let tornBytes = 0; tornBytes <= size; tornBytes += 1) {
      const tablet = await makeFilledTablet(name, 2);
      let files = makeMemoryFiles(tablet.disk, makePower(0, tornBytes));
      const journal = new Proxy({} as JournalCopy, {
        get: (_, method: keyof JournalCopy) => makeJournalCopy(files)[method],
      });
      const { store } = switchOn(tablet, makePower(), () => ({ journal }));
      await store.restore();
      expect(await store.append(name, 2, entryAt(2))).toMatchObject({
        ok: false,
        error: { mayBeHeld: true },
      });
      files = makeMemoryFiles(tablet.disk);
      const reloaded = await store.reload(name);
      const count = tornBytes === size ? 3 : 2;
      expect(reloaded, `${tornBytes} bytes`).toMatchObject({
        ok: true,
        value: { entries: entriesUpTo(count) },
      });
      expect((await store.append(name, count, entryAt(count))).ok, `${tornBytes} bytes`).toBe(true);
      const { logs, mended } = await switchOn(tablet).store.restore();
      expect({ held: logs.get(name), mended }).toStrictEqual({ held: entriesUpTo(count + 1), mended: [] });
    }
  });

  it('in the index is reported, and reload tells that the entry is held after all', async () => {
    const fault: Fault = { error: null };
    const { store } = switchOn(await makeFilledTablet(name, 2), makePower(), ({ index }) => ({
      index: failing(index, 'index', ['append'], fault),
    }));
    await store.restore();
    fault.error = quota;
    expect(await store.append(name, 2, entryAt(2))).toMatchObject({
      ok: false,
      error: { copy: 'index', kind: 'quotaExceeded', mayBeHeld: true },
    });
    const still = await store.reload(name);
    expect(still, 'while there is no room').toMatchObject({
      ok: true,
      value: { entries: entriesUpTo(3), troubles: [{ copy: 'index', kind: 'quotaExceeded', name }] },
    });
    expect((await store.append(name, 3, entryAt(3))).ok, 'while there is no room').toBe(false);
    fault.error = null;
    expect(await store.reload(name)).toMatchObject({
      ok: true,
      value: { entries: entriesUpTo(3), troubles: [], mended: [{ copy: 'index', kind: 'wasBehind' }] },
    });
    expect((await store.append(name, 3, entryAt(3))).ok).toBe(true);
  });

  it('on the way out is reported, and reload tells what is left', async () => {
    const fault: Fault = { error: null };
    const tablet = await makeFilledTablet(name, 2);
    const { store } = switchOn(tablet, makePower(), ({ index }) => ({
      index: failing(index, 'index', ['remove', 'setAside'], fault),
    }));
    await store.restore();
    fault.error = new Error('broken');
    expect(await store.remove(name)).toMatchObject({
      ok: false,
      error: { kind: 'indexUnavailable', mayBeHeld: true },
    });
    fault.error = null;
    expect(await store.reload(name), 'once begun it is finished').toMatchObject({
      ok: true,
      value: { entries: [] },
    });
    for (const [seq, entry] of entriesUpTo(2).entries())
      expect((await store.append(name, seq, entry)).ok).toBe(true);
    fault.error = new Error('broken');
    expect((await store.setAside(name, 'refused')).ok).toBe(false);
    expect(await store.reload(name), 'half aside counts in neither copy').toMatchObject({ ok: false });
    expect((await store.append(name, 0, entryAt(0))).ok).toBe(false);
    expect((await store.restore()).logs.has(name), 'half aside counts in neither copy').toBe(false);
    expect((await store.append(name, 0, entryAt(0))).ok).toBe(false);
    fault.error = null;
    expect(await store.reload(name)).toMatchObject({ ok: true, value: { entries: [] } });
    expect(await store.listAside()).toHaveLength(2);
    expect((await store.append(name, 0, entryAt(0))).ok).toBe(true);
  });
});

describe('a copy that cannot be reached', () => {
  const every = <C extends object>(copy: C) => Object.keys(copy) as (keyof C & string)[];

  it.each(['journal', 'index'] as const)(
    'is named, and the logs are shown from the other: %s',
    async (copy) => {
      const tablet = await makeFilledTablet(name, 2);
      const fault: Fault = { error: new Error('refused to open') };
      const { store } = switchOn(tablet, makePower(), ({ journal, index }) =>
        copy === 'journal'
          ? { journal: failing(journal, 'journal', every(journal), fault) }
          : { index: failing(index, 'index', every(index), fault) },
      );
      const kind = `${copy}Unavailable`;
      const restored = await store.restore();
      expect(restored).toMatchObject({
        aside: [],
        mended: [],
        unread: [],
        troubles: [{ copy, kind, name: null }],
      });
      expect(restored.logs).toStrictEqual(new Map([[name, entriesUpTo(2)]]));
      for (const log of [name, 'settings']) {
        const written = await store.append(log, log === name ? 2 : 0, entryAt(2));
        expect(written).toMatchObject({ ok: false, error: { copy, kind, mayBeHeld: false } });
      }
      expect(await store.remove(name)).toMatchObject({ ok: false, error: { kind } });
      expect(await store.setAside(name, 'refused')).toMatchObject({ ok: false, error: { kind } });
      expect(await store.reload(name)).toMatchObject({ ok: true, value: { entries: entriesUpTo(2) } });
      expect(await store.listAside()).toStrictEqual([]);
      expect(tablet.disk.journals).toStrictEqual(new Map([[name, toBytes(linesUpTo(2))]]));
      fault.error = null;
      expect((await store.restore()).troubles).toStrictEqual([]);
      expect((await store.append(name, 2, entryAt(2))).ok).toBe(true);
    },
  );

  it('leaves a damaged log of the other where it is, and names it', async () => {
    const tablet = await makeFilledTablet(name, 3);
    const bad = toBytes([lineAt(0), 'scribble', lineAt(2)]);
    tablet.disk.journals.set(name, bad);
    const fault: Fault = { error: locked };
    const { store } = switchOn(tablet, makePower(), ({ index }) => ({
      index: failing(index, 'index', every(index), fault),
    }));
    const { logs, aside, unread } = await store.restore();
    expect({ size: logs.size, aside }).toStrictEqual({ size: 0, aside: [] });
    expect(unread).toStrictEqual([{ name, copy: 'journal', reason: 'badLine' }]);
    expect(tablet.disk.journals.get(name)).toStrictEqual(bad);
    fault.error = null;
    expect(await store.reload(name)).toMatchObject({ ok: true, value: { entries: entriesUpTo(3) } });
  });

  it('in both copies gives no logs, two names, and a reload that is refused', async () => {
    const fault: Fault = { error: new Error('gone') };
    const { store } = switchOn(await makeFilledTablet(name, 1), makePower(), ({ journal, index }) => ({
      journal: failing(journal, 'journal', every(journal), fault),
      index: failing(index, 'index', every(index), fault),
    }));
    const { logs, troubles } = await store.restore();
    expect(logs.size).toBe(0);
    expect(troubles.map(({ kind }) => kind)).toStrictEqual(['journalUnavailable', 'indexUnavailable']);
    expect((await store.reload(name)).ok).toBe(false);
    await store.release();
  });

  it('for one file holds up that log only', async () => {
    const tablet = await makeFilledTablet(name, 1);
    const files = makeMemoryFiles(tablet.disk);
    const journal = makeJournalCopy({
      ...files,
      read: async (folder, file) => {
        if (file === name) throw locked;
        return files.read(folder, file);
      },
    });
    const { store } = switchOn(tablet, makePower(), () => ({ journal }));
    const { logs, troubles } = await store.restore();
    expect(logs.get(name)).toStrictEqual(entriesUpTo(1));
    expect(troubles).toMatchObject([{ copy: 'journal', kind: 'lockedElsewhere', name }]);
    expect((await store.append(name, 1, entryAt(1))).ok).toBe(false);
    expect((await store.append('settings', 0, entryAt(0))).ok).toBe(true);
  });

  it('because its marks cannot be read is out of reach as a whole, so that nothing half gone is made whole', async () => {
    const tablet = await makeFilledTablet(name, 2);
    tablet.disk.journals.delete(name);
    tablet.disk.marks.set(`${name}.removed`, new Uint8Array());
    const fault: Fault = { error: locked };
    const { store } = switchOn(tablet, makePower(), ({ journal }) => ({
      journal: failing(journal, 'journal', ['listMarks'], fault),
    }));
    const troubles = [{ copy: 'journal', kind: 'lockedElsewhere' }];
    expect(await store.restore()).toMatchObject({ mended: [], troubles });
    expect(await store.reload(name)).toMatchObject({ ok: true, value: { mended: [], troubles } });
    expect(tablet.disk.journals.size).toBe(0);
    fault.error = null;
    expect(await store.reload(name)).toMatchObject({ ok: true, value: { entries: [], troubles: [] } });
    expect((await store.restore()).logs.size).toBe(0);
  });
});
