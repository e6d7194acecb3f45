import { describe, expect, it } from 'vitest';
import { refuse } from '../../../shared/result';
import { readRewrite, writeRewrite } from '../../../src/storage/rewriteFile';
import { makePower } from './power';
import {
  entriesUpTo,
  entryAt,
  lineAt,
  linesUpTo,
  makeFilledTablet,
  readEverything,
  switchOn,
  type Tablet,
} from './tablet';

const name = 'closed-2026-11';
/** What is left of the log: the first entry and the last, in places of their own. */
const left = [entryAt(0), entryAt(3)];

const readLog = async (tablet: Tablet) => (await switchOn(tablet).store.restore()).logs.get(name);

describe('rewriting a log', () => {
  it('leaves what was given in both copies, and nothing else of it anywhere', async () => {
    const tablet = await makeFilledTablet(name, 4);
    expect(await readEverything(tablet)).toContain('Nº 1');
    const { store, journal, index } = switchOn(tablet);
    await store.restore();
    expect(await store.rewrite(name, left)).toStrictEqual({ ok: true, value: undefined });
    const [inJournal, inIndex] = [await journal.read(name), await index.read(name)];
    expect(inJournal).toStrictEqual(inIndex);
    expect(await readEverything(tablet)).not.toMatch(/Nº [12]/);
    expect(await readLog(tablet)).toStrictEqual(left);
    expect(tablet.disk.rewrites.size).toBe(0);
  });

  it('lets the log grow on from there', async () => {
    const tablet = await makeFilledTablet(name, 4);
    const { store } = switchOn(tablet);
    await store.restore();
    await store.rewrite(name, left);
    expect((await store.append(name, 2, entryAt(9))).ok).toBe(true);
    expect(await readLog(tablet)).toStrictEqual([...left, entryAt(9)]);
  });

  it('is wholly the old log or wholly the new one, wherever and at whatever byte the power failed', async () => {
    const bytes = writeRewrite([lineAt(0), lineAt(1)]).length;
    const seen = new Set<string>();
    for (let failsAt = 0; failsAt <= 6; failsAt += 1) {
      for (let tornBytes = 0; tornBytes <= bytes; tornBytes += 1) {
        const tablet = await makeFilledTablet(name, 4);
        const { store } = switchOn(tablet, makePower(failsAt, tornBytes));
        await store.restore();
        const done = await store.rewrite(name, left);
        const about = `step ${failsAt}, ${tornBytes} bytes`;
        const held = await readLog(tablet);
        const isNew = JSON.stringify(held) === JSON.stringify(left);
        expect(isNew ? left : entriesUpTo(4), about).toStrictEqual(held);
        if (done.ok || failsAt > 1) expect(isNew, about).toBe(true);
        expect(tablet.disk.rewrites.size, about).toBe(0);
        expect(tablet.disk.aside.size, about).toBe(0);
        seen.add(`${isNew} ${done.ok}`);
      }
    }
    expect(seen).toStrictEqual(new Set(['false false', 'true false', 'true true']));
  });

  it('that one copy refused is shown as what it is about to be, takes nothing, and is finished by a reload', async () => {
    const tablet = await makeFilledTablet(name, 4);
    let isFull = true;
    const full = { copy: 'index', kind: 'quotaExceeded', detail: 'no room' } as const;
    const { store } = switchOn(tablet, makePower(), ({ index }) => ({
      index: {
        ...index,
        exchange: async (...given) => (isFull ? refuse(full) : index.exchange(...given)),
      },
    }));
    await store.restore();
    expect(await store.rewrite(name, left)).toMatchObject({ ok: false, error: { kind: 'quotaExceeded' } });
    const still = await store.reload(name);
    expect(still).toMatchObject({
      ok: true,
      value: { entries: left, aside: [], troubles: [{ kind: 'quotaExceeded' }] },
    });
    expect((await store.append(name, 2, entryAt(9))).ok).toBe(false);
    isFull = false;
    expect(await store.reload(name)).toMatchObject({ ok: true, value: { entries: left, troubles: [] } });
    expect((await store.append(name, 2, entryAt(9))).ok).toBe(true);
  });

  it('that found no room to be written down changes nothing', async () => {
    const tablet = await makeFilledTablet(name, 4);
    const full = { copy: 'journal', kind: 'quotaExceeded', detail: 'no room' } as const;
    const { store } = switchOn(tablet, makePower(), () => ({}));
    await store.restore();
    const { store: narrow } = switchOn(tablet, makePower(), ({ journal }) => ({
      journal: { ...journal, prepare: async () => refuse(full) },
    }));
    await narrow.restore();
    expect(await narrow.rewrite(name, left)).toMatchObject({ ok: false, error: { kind: 'quotaExceeded' } });
    expect(await narrow.reload(name)).toMatchObject({ ok: true, value: { entries: entriesUpTo(4) } });
  });
});

describe('the file of a log that is about to be rewritten', () => {
  it('is whole, or is none, cut at every byte', () => {
    const lines = linesUpTo(3);
    const bytes = writeRewrite(lines);
    expect(readRewrite(bytes)).toStrictEqual(lines);
    expect(readRewrite(writeRewrite([]))).toStrictEqual([]);
    for (let size = 0; size < bytes.length; size += 1) {
      expect(readRewrite(bytes.subarray(0, size)), `${size} bytes`).toBeNull();
    }
  });
});
