import { describe, expect, it } from 'vitest';
import { encodeLine } from '../../../src/storage/line';
import { writeKey } from '../../../src/storage/readIndex';
import type { Restored } from '../../../src/storage/store';
import { joinBytes } from './memoryFiles';
import {
  editIndex,
  entriesUpTo,
  entryAt,
  lineAt,
  linesUpTo,
  makeFilledTablet,
  makeTablet,
  switchOn,
  type Tablet,
  toBytes,
} from './tablet';

const name = 'open-k3f9x2';
const whole = toBytes(linesUpTo(3));
const quiet = { later: [], aside: [], mended: [], troubles: [], unread: [] };

const restore = (tablet: Tablet): Promise<Restored> => switchOn(tablet).store.restore();

/** Restores twice: the second time everything must be as the first time left it, with nothing more to mend. */
const restoreTwice = async (tablet: Tablet): Promise<Restored> => {
  const first = await restore(tablet);
  const journal = tablet.disk.journals.get(name);
  expect(await restore(tablet)).toStrictEqual({ ...quiet, logs: first.logs });
  expect(tablet.disk.journals.get(name)).toStrictEqual(journal);
  return first;
};

describe('a restore', () => {
  it('of a new tablet finds nothing and is content', async () => {
    expect(await restoreTwice(makeTablet())).toStrictEqual({ ...quiet, logs: new Map() });
  });

  it('gives back what was acknowledged, log by log', async () => {
    const tablet = await makeFilledTablet(name, 3);
    const { store } = switchOn(tablet);
    await store.restore();
    await store.append('settings', 0, entryAt(0));
    const logs = new Map([
      [name, entriesUpTo(3)],
      ['settings', entriesUpTo(1)],
    ]);
    expect(await restoreTwice(tablet)).toStrictEqual({ ...quiet, logs });
  });

  it('rebuilds the index when the browser has deleted it', async () => {
    const tablet = { ...(await makeFilledTablet(name, 3)), factory: makeTablet().factory };
    const { logs, mended } = await restoreTwice(tablet);
    expect(logs.get(name)).toStrictEqual(entriesUpTo(3));
    expect(mended).toStrictEqual([{ name, copy: 'index', kind: 'wasMissing', entries: 3 }]);
    const { logs: fromIndex } = await restore({ ...tablet, disk: makeTablet().disk });
    expect(fromIndex.get(name)).toStrictEqual(entriesUpTo(3));
  });

  it('rebuilds the journal when it is gone', async () => {
    const tablet = { ...(await makeFilledTablet(name, 3)), disk: makeTablet().disk };
    const { logs, mended } = await restoreTwice(tablet);
    expect(logs.get(name)).toStrictEqual(entriesUpTo(3));
    expect(mended).toStrictEqual([{ name, copy: 'journal', kind: 'wasMissing', entries: 3 }]);
    expect(tablet.disk.journals.get(name)).toStrictEqual(whole);
  });

  it('gives everything back from the index when the journal was cut, at any byte', async () => {
    const tablet = await makeFilledTablet(name, 3);
    for (let cut = 0; cut < whole.length; cut += 1) {
      tablet.disk.journals.set(name, whole.slice(0, cut));
      const { logs, mended } = await restore(tablet);
      expect(logs.get(name), `cut at ${cut}`).toStrictEqual(entriesUpTo(3));
      expect(
        mended.map(({ kind }) => kind),
        `cut at ${cut}`,
      ).not.toContain('lostTail');
      expect(tablet.disk.journals.get(name), `cut at ${cut}`).toStrictEqual(whole);
    }
  });

  it('with no index gives back the lines before a cut, keeps the rest aside and says it is lost, at any byte', async () => {
    for (let cut = 0; cut < whole.length; cut += 1) {
      const tablet = makeTablet();
      tablet.disk.journals.set(name, whole.slice(0, cut));
      const { logs, aside, mended } = await restoreTwice(tablet);
      const kept = [1, 2, 3].filter((count) => toBytes(linesUpTo(count)).length <= cut).length;
      const end = toBytes(linesUpTo(kept)).length;
      expect(logs.get(name) ?? [], `cut at ${cut}`).toStrictEqual(entriesUpTo(kept));
      expect(tablet.disk.journals.get(name), `cut at ${cut}`).toStrictEqual(whole.slice(0, end));
      expect([...tablet.disk.aside.values()], `cut at ${cut}`).toStrictEqual(
        cut === end ? [] : [whole.slice(end, cut)],
      );
      expect(aside.map(({ reason }) => reason)).toStrictEqual(cut === end ? [] : ['tornTail']);
      expect(mended.filter(({ kind }) => kind === 'lostTail')).toStrictEqual(
        cut === end ? [] : [{ name, copy: 'journal', kind: 'lostTail', atLeast: 1 }],
      );
    }
  });

  it('with any one bit of the journal changed gives back from the index what was written', async () => {
    const tablet = await makeFilledTablet(name, 2);
    const bytes = toBytes(linesUpTo(2));
    for (let bit = 0; bit < bytes.length * 8; bit += 1) {
      tablet.disk.journals.set(name, flip(bytes, bit));
      const { logs, mended, aside } = await restore(tablet);
      expect(logs.get(name), `bit ${bit}`).toStrictEqual(entriesUpTo(2));
      expect(mended.length, `bit ${bit}`).toBeGreaterThan(0);
      expect(tablet.disk.aside.get(aside[0]?.kept ?? ''), `bit ${bit}`).toBeDefined();
    }
  });

  it('with any one bit of the only copy changed never gives back anything else than was written', async () => {
    const bytes = toBytes(linesUpTo(2));
    for (let bit = 0; bit < bytes.length * 8; bit += 1) {
      const tablet = makeTablet();
      tablet.disk.journals.set(name, flip(bytes, bit));
      const { logs, aside } = await restore(tablet);
      const entries = logs.get(name) ?? [];
      expect(entries, `bit ${bit}`).toStrictEqual(entriesUpTo(2).slice(0, entries.length));
      expect(entries.length, `bit ${bit}`).toBeLessThan(2);
      const left = tablet.disk.journals.get(name) ?? new Uint8Array();
      const kept = tablet.disk.aside.get(aside[0]?.kept ?? '') ?? new Uint8Array();
      expect(joinBytes(left, kept), `bit ${bit}: no byte is thrown away`).toStrictEqual(flip(bytes, bit));
    }
  });

  it('with any one bit of the index changed gives back from the journal what was written', async () => {
    const tablet = await makeFilledTablet(name, 2);
    const bytes = new TextEncoder().encode(lineAt(1));
    for (let bit = 0; bit < bytes.length * 8; bit += 1) {
      const changed = new TextDecoder().decode(flip(bytes, bit));
      await editIndex(tablet, (place) => place.put(changed, writeKey(name, 1)));
      const { logs, mended, aside } = await restore(tablet);
      expect(logs.get(name), `bit ${bit}`).toStrictEqual(entriesUpTo(2));
      expect(mended).toStrictEqual([{ name, copy: 'index', kind: 'wasDamaged', entries: 2 }]);
      expect(aside).toMatchObject([{ name, copy: 'index', reason: 'badLine' }]);
    }
    expect(await restore(tablet)).toMatchObject(quiet);
  });

  it.each([
    ['a bad line inside', 'badLine', [lineAt(0), 'scribble', lineAt(2)]],
    ['a gap', 'gap', [lineAt(0), lineAt(2)]],
    ['a repeat', 'repeat', [lineAt(0), lineAt(0), lineAt(1)]],
  ] as const)('keeps a journal with %s aside and rebuilds it from the index', async (_, reason, lines) => {
    const tablet = await makeFilledTablet(name, 3);
    tablet.disk.journals.set(name, toBytes(lines));
    const { logs, aside, mended } = await restoreTwice(tablet);
    expect(logs.get(name)).toStrictEqual(entriesUpTo(3));
    expect(aside).toMatchObject([{ name, copy: 'journal', reason }]);
    expect(tablet.disk.aside.get(aside[0]?.kept ?? '')).toStrictEqual(toBytes(lines));
    expect(mended).toStrictEqual([{ name, copy: 'journal', kind: 'wasDamaged', entries: 3 }]);
  });

  it('mends the index when it is behind', async () => {
    const tablet = await makeFilledTablet(name, 3);
    await editIndex(tablet, (place) => place.delete(writeKey(name, 2)));
    const { logs, mended } = await restoreTwice(tablet);
    expect(logs.get(name)).toStrictEqual(entriesUpTo(3));
    expect(mended).toStrictEqual([{ name, copy: 'index', kind: 'wasBehind', entries: 1 }]);
  });

  it('keeps both aside when both are damaged, and throws nothing away', async () => {
    const tablet = await makeFilledTablet(name, 3);
    const bad = toBytes([lineAt(0), 'scribble', lineAt(2)]);
    tablet.disk.journals.set(name, bad);
    await editIndex(tablet, (place) => place.delete(writeKey(name, 1)));
    const { logs, aside, mended } = await restoreTwice(tablet);
    expect({ logs, mended }).toStrictEqual({ logs: new Map(), mended: [] });
    expect(aside.map(({ copy }) => copy)).toStrictEqual(['journal', 'index']);
    expect([...tablet.disk.aside.values()]).toStrictEqual([bad]);
    expect(await switchOn(tablet).store.listAside()).toHaveLength(2);
  });

  it('keeps both aside when they contradict each other', async () => {
    const tablet = await makeFilledTablet(name, 3);
    await editIndex(tablet, (place) =>
      place.put(encodeLine(1, '"a mix without an outcome"'), writeKey(name, 1)),
    );
    const { logs, aside } = await restoreTwice(tablet);
    expect(logs.size).toBe(0);
    expect(aside).toMatchObject([
      { name, copy: 'journal', reason: 'contradiction' },
      { name, copy: 'index', reason: 'contradiction' },
    ]);
    expect([...tablet.disk.aside.values()]).toStrictEqual([whole]);
  });

  it('leaves and names what is no log', async () => {
    const tablet = await makeFilledTablet(name, 1);
    tablet.disk.journals.set('Not a log', new Uint8Array([1]));
    await editIndex(tablet, (place) => place.put('x', 'strange'));
    const { logs, unread } = await restore(tablet);
    expect([...logs.keys()]).toStrictEqual([name]);
    expect(unread).toStrictEqual([
      { name: 'Not a log', copy: 'journal', reason: 'badName' },
      { name: 'strange', copy: 'index', reason: 'badName' },
    ]);
    expect(tablet.disk.journals.get('Not a log')).toStrictEqual(new Uint8Array([1]));
  });
});

const flip = (bytes: Uint8Array, bit: number): Uint8Array => {
  const changed = bytes.slice();
  changed[bit >> 3] = (changed[bit >> 3] ?? 0) ^ (1 << (bit & 7));
  return changed;
};
