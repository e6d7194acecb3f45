import { describe, expect, it } from 'vitest';
import type { Json } from '../../../src/storage/json';
import { makePower } from './power';
import { entriesUpTo, entryAt, linesUpTo, makeFilledTablet, makeTablet, switchOn, toBytes } from './tablet';

const name = 'open-k3f9x2';

describe('appending', () => {
  it('is refused by value before the first restore, and again after a release', async () => {
    const tablet = makeTablet();
    const { store } = switchOn(tablet);
    const refused = {
      ok: false,
      error: { name, kind: 'notRestored', copy: null, mayBeHeld: false, detail: '' },
    };
    expect(await store.append(name, 0, entryAt(0))).toStrictEqual(refused);
    expect(await store.remove(name)).toStrictEqual(refused);
    expect(await store.setAside(name, 'refused')).toStrictEqual(refused);
    expect(await store.reload(name)).toStrictEqual(refused);
    await store.restore();
    expect(await store.append(name, 0, entryAt(0))).toStrictEqual({ ok: true, value: undefined });
    await store.release();
    expect(await store.append(name, 1, entryAt(1))).toStrictEqual(refused);
    expect((await store.restore()).logs.get(name)).toStrictEqual(entriesUpTo(1));
    expect((await store.append(name, 1, entryAt(1))).ok).toBe(true);
  });

  it('is acknowledged only when both copies have it', async () => {
    const tablet = makeTablet();
    const { store, index } = switchOn(tablet);
    await store.restore();
    await store.append(name, 0, entryAt(0));
    expect(tablet.disk.journals.get(name)).toStrictEqual(toBytes(linesUpTo(1)));
    expect(await index.read(name)).toMatchObject({ ok: true, value: { lines: linesUpTo(1) } });
  });

  it.each([-1, 0, 1, 3, 1.5, Number.NaN])('at place %d of a log of two is refused', async (seq) => {
    const tablet = await makeFilledTablet(name, 2);
    const { store } = switchOn(tablet);
    await store.restore();
    expect(await store.append(name, seq, entryAt(2))).toMatchObject({
      ok: false,
      error: { kind: 'wrongSeq', mayBeHeld: false },
    });
    expect(tablet.disk.journals.get(name)).toStrictEqual(toBytes(linesUpTo(2)));
    expect((await store.append(name, 2, entryAt(2))).ok).toBe(true);
  });

  it('is refused under a name that is none, and with what JSON would change', async () => {
    const tablet = makeTablet();
    const { store } = switchOn(tablet);
    await store.restore();
    expect(await store.append('../x', 0, 1)).toMatchObject({ ok: false, error: { kind: 'badName' } });
    expect(await store.append(name, 0, Number.NaN)).toMatchObject({ ok: false, error: { kind: 'notJson' } });
    expect(tablet.disk.journals.size).toBe(0);
    expect((await store.append(name, 0, 1)).ok).toBe(true);
  });

  it('many at once keeps their order, and two for one place never both', async () => {
    const tablet = makeTablet();
    const { store } = switchOn(tablet);
    await store.restore();
    const places = [0, 1, 2, 2, 3, 4];
    const written = await Promise.all(
      places.flatMap((seq) => [
        store.append(name, seq, entryAt(seq)),
        store.append('settings', seq, entryAt(seq)),
      ]),
    );
    expect(written.filter(({ ok }) => ok)).toHaveLength(10);
    const { logs } = await switchOn(tablet).store.restore();
    expect(logs).toStrictEqual(
      new Map([
        [name, entriesUpTo(5)],
        ['settings', entriesUpTo(5)],
      ]),
    );
  });

  it('writes what the entry was when it was handed over', async () => {
    const tablet = makeTablet();
    const { store } = switchOn(tablet);
    await store.restore();
    const entry: { [key: string]: Json } = { at: 'first' };
    const written = store.append(name, 0, entry);
    entry.at = 'later';
    await written;
    expect((await switchOn(tablet).store.restore()).logs.get(name)).toStrictEqual([{ at: 'first' }]);
  });

  it('is done in both copies before a release that was asked for later closes either', async () => {
    const tablet = makeTablet();
    const told: string[] = [];
    const { store } = switchOn(tablet, makePower(), ({ journal, index }) => ({
      journal: {
        ...journal,
        close: () => {
          told.push('journal closed');
          return journal.close();
        },
      },
      index: {
        ...index,
        append: async (...args) => {
          await new Promise((resolve) => setTimeout(resolve, 5));
          const written = await index.append(...args);
          told.push('written');
          return written;
        },
        close: () => {
          told.push('index closed');
          return index.close();
        },
      },
    }));
    await store.restore();
    const written = entriesUpTo(3).map((entry, seq) => store.append(name, seq, entry));
    await store.release();
    expect((await Promise.all(written)).every(({ ok }) => ok)).toBe(true);
    expect(told).toStrictEqual(['written', 'written', 'written', 'journal closed', 'index closed']);
    expect((await switchOn(tablet).store.restore()).logs.get(name)).toStrictEqual(entriesUpTo(3));
  });
});

describe('appending several in one go', () => {
  it('is acknowledged once all of them are in both copies, which write once each', async () => {
    const tablet = makeTablet();
    let writes = 0;
    const { store, index } = switchOn(tablet, makePower(), ({ journal }) => ({
      journal: {
        ...journal,
        append: (...args) => {
          writes += 1;
          return journal.append(...args);
        },
      },
    }));
    await store.restore();
    await store.append(name, 0, entryAt(0));
    expect((await store.append(name, 1, entryAt(1), entryAt(2), entryAt(3))).ok).toBe(true);
    expect(writes).toBe(2);
    expect(tablet.disk.journals.get(name)).toStrictEqual(toBytes(linesUpTo(4)));
    expect(await index.read(name)).toMatchObject({ ok: true, value: { lines: linesUpTo(4) } });
    expect((await store.append(name, 4, entryAt(4))).ok).toBe(true);
  });

  it('broken off, leaves the first so many of them, each whole, and goes on from there', async () => {
    const [one, two, three] = [1, 2, 3].map((count) => toBytes(linesUpTo(count)).length);
    const found: number[] = [];
    for (const bytes of [0, 5, one ?? 0, (one ?? 0) + 5, two ?? 0, (three ?? 0) - 1, three ?? 0]) {
      const tablet = makeTablet();
      const { store } = switchOn(tablet, makePower(0, bytes));
      await store.restore();
      expect((await store.append(name, 0, entryAt(0), entryAt(1), entryAt(2))).ok).toBe(false);
      const { store: again } = switchOn(tablet);
      const held = (await again.restore()).logs.get(name) ?? [];
      expect(held).toStrictEqual(entriesUpTo(held.length));
      found.push(held.length);
      expect((await again.append(name, held.length, entryAt(held.length))).ok).toBe(true);
      expect((await switchOn(tablet).store.restore()).logs.get(name)).toStrictEqual(
        entriesUpTo(held.length + 1),
      );
    }
    expect(found).toStrictEqual([0, 0, 1, 1, 2, 2, 3]);
  });
});

describe('removing', () => {
  it('takes a log out of both copies, may be done twice, and frees its name', async () => {
    const tablet = await makeFilledTablet(name, 2);
    const { store } = switchOn(tablet);
    await store.restore();
    expect((await store.remove(name)).ok).toBe(true);
    expect((await store.remove(name)).ok).toBe(true);
    expect((await switchOn(tablet).store.restore()).logs.size).toBe(0);
    expect((await store.append(name, 0, entryAt(0))).ok).toBe(true);
    expect((await switchOn(tablet).store.restore()).logs.get(name)).toStrictEqual(entriesUpTo(1));
  });

  it('leaves the log whose name begins the same', async () => {
    const tablet = await makeFilledTablet('open-ab', 2);
    const { store } = switchOn(tablet);
    await store.restore();
    await store.append('open-a', 0, entryAt(0));
    await store.remove('open-a');
    expect((await switchOn(tablet).store.restore()).logs).toStrictEqual(
      new Map([['open-ab', entriesUpTo(2)]]),
    );
  });
});
