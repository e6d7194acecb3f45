import { describe, expect, it } from 'vitest';
import { makePower } from './power';
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

const month = 'closed-2026-11';
const quiet = { aside: [], mended: [], troubles: [], unread: [] };

/** A tablet with two months and the settings, as a station leaves it. */
const makeMonths = async (): Promise<Tablet> => {
  const tablet = await makeFilledTablet(month, 3);
  const { store } = switchOn(tablet);
  await store.restore();
  await store.append('closed-2026-10', 0, entryAt(0));
  await store.append('settings', 0, entryAt(0));
  await store.release();
  return tablet;
};

const start = async (tablet: Tablet, power = makePower()) => {
  const { store } = switchOn(tablet, power);
  return { store, restored: await store.restore('closed-') };
};

describe('a log that may come later', () => {
  it('is known by its name, and takes nothing until it is read', async () => {
    const { store, restored } = await start(await makeMonths());
    expect(restored).toStrictEqual({
      ...quiet,
      logs: new Map([['settings', entriesUpTo(1)]]),
      later: ['closed-2026-10', month],
    });
    for (const seq of [0, 3]) {
      const refused = await store.append(month, seq, entryAt(seq));
      expect(refused).toMatchObject({ ok: false, error: { kind: 'notRestored', mayBeHeld: false } });
    }
    expect(await store.remove(month)).toMatchObject({ ok: false, error: { kind: 'notRestored' } });
    expect(await store.rewrite(month, [])).toMatchObject({ ok: false, error: { kind: 'notRestored' } });
    expect(await store.readPast(month)).toStrictEqual({
      ok: true,
      value: { ...quiet, entries: entriesUpTo(3) },
    });
    expect((await store.append(month, 3, entryAt(3))).ok).toBe(true);
    expect((await store.append('settings', 1, entryAt(1))).ok).toBe(true);
  });

  it('is known where one copy alone holds it, and mended when it is read', async () => {
    const tablet = await makeMonths();
    tablet.disk.journals.delete(month);
    tablet.disk.journals.delete('closed-2026-10');
    await editIndex(tablet, (place) => place.delete(`log:${month}:00000002`));
    const { store, restored } = await start(tablet);
    expect(restored).toMatchObject({ ...quiet, later: ['closed-2026-10', month] });
    const read = await store.readPast(month);
    expect(read).toMatchObject({
      value: { entries: entriesUpTo(2), mended: [{ copy: 'journal', kind: 'wasMissing', entries: 2 }] },
    });
    expect(tablet.disk.journals.get(month)).toStrictEqual(toBytes(linesUpTo(2)));
  });

  it('with a bad line inside is set aside and named when it is read', async () => {
    const tablet = await makeMonths();
    tablet.disk.journals.set(month, toBytes([lineAt(0), 'nothing', lineAt(2)]));
    tablet.factory = makeTablet().factory;
    const { store } = await start(tablet);
    expect(await store.readPast(month)).toMatchObject({
      value: { entries: [], aside: [{ name: month, copy: 'journal', reason: 'badLine' }] },
    });
  });

  it('is read by the next start where the power failed before it was, or while it was mended', async () => {
    for (let step = 0; step < 3; step += 1) {
      const tablet = await makeMonths();
      tablet.factory = makeTablet().factory;
      const { store } = await start(tablet, makePower(step, 7));
      await store.readPast(month);
      const again = await start(tablet);
      expect(again.restored.later).toContain(month);
      expect(await again.store.readPast(month)).toMatchObject({ value: { entries: entriesUpTo(3) } });
    }
  });

  it('that was being rewritten or on its way out is finished first, wherever the power failed', async () => {
    for (const work of ['rewrite', 'remove'] as const) {
      for (let step = 0; step < 8; step += 1) {
        const tablet = await makeMonths();
        const { store } = await start(tablet, makePower(step, 5));
        await store.readPast(month);
        const left = work === 'rewrite' ? entriesUpTo(1) : [];
        await (work === 'rewrite' ? store.rewrite(month, left) : store.remove(month));
        const plain = await switchOn({ ...tablet, disk: cloneDisk(tablet) }).store.restore();
        const again = await start(tablet);
        expect(again.restored.logs.has(month)).toBe(false);
        const read = await again.store.readPast(month);
        expect(read).toMatchObject({ ok: true, value: { entries: plain.logs.get(month) ?? [] } });
        expect([0, 1, 3]).toContain(read.ok && read.value.entries.length);
        expect(tablet.disk.marks.size + tablet.disk.rewrites.size).toBe(0);
      }
    }
  });
});

const cloneDisk = ({ disk }: Tablet): Tablet['disk'] => ({
  journals: new Map(disk.journals),
  aside: new Map(disk.aside),
  marks: new Map(disk.marks),
  rewrites: new Map(disk.rewrites),
});
