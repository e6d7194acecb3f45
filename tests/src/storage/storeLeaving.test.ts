import { describe, expect, it } from 'vitest';
import { encodeLine } from '../../../src/storage/line';
import { writeKey } from '../../../src/storage/readIndex';
import { makePower } from './power';
import { editIndex, entryAt, linesUpTo, makeFilledTablet, switchOn, type Tablet, toBytes } from './tablet';

const name = 'open-k3f9x2';

/** Everything that was set aside in either copy, as lines. */
const readAside = async (tablet: Tablet): Promise<{ journal: string[]; index: unknown[] }> => {
  const { strict } = switchOn(tablet);
  const index = await strict.use('readonly', (place) => {
    const asked = place.getAll(IDBKeyRange.bound('aside:', 'aside:\uffff'));
    return new Promise<unknown[]>((resolve) => {
      asked.onsuccess = () => resolve(asked.result);
    });
  });
  const journal = [...tablet.disk.aside.values()].map((bytes) => new TextDecoder().decode(bytes));
  return { journal, index };
};

const everything = (count: number) => ({
  journal: [new TextDecoder().decode(toBytes(linesUpTo(count)))],
  index: [linesUpTo(count).map((line, seq) => [writeKey(name, seq), line])],
});

describe('setting a log aside', () => {
  it('moves it out of both copies, untouched and named, and frees its name', async () => {
    const tablet = await makeFilledTablet(name, 3);
    const { store } = switchOn(tablet);
    await store.restore();
    const moved = await store.setAside(name, 'unknownVersion');
    expect(moved).toMatchObject({
      ok: true,
      value: [
        { name, copy: 'journal', reason: 'unknownVersion' },
        { name, copy: 'index', reason: 'unknownVersion' },
      ],
    });
    expect(await readAside(tablet)).toStrictEqual(everything(3));
    expect((await store.append(name, 0, entryAt(0))).ok).toBe(true);
  });

  it('is remembered over all starts, twice under one name', async () => {
    const tablet = await makeFilledTablet(name, 3);
    const { store } = switchOn(tablet);
    await store.restore();
    await store.setAside(name, 'refused');
    await store.append(name, 0, entryAt(0));
    await store.setAside(name, 'refused');
    const kept = await switchOn(tablet).store.listAside();
    expect(kept.map(({ copy }) => copy)).toStrictEqual(['journal', 'journal', 'index', 'index']);
    expect(new Set(kept.map((note) => note.kept)).size).toBe(4);
    expect((await switchOn(tablet).store.restore()).aside).toStrictEqual([]);
  });

  it('of a log that is not there is done, and leaves no note', async () => {
    const tablet = await makeFilledTablet(name, 1);
    const { store } = switchOn(tablet);
    await store.restore();
    expect(await store.setAside('open-other', 'refused')).toStrictEqual({ ok: true, value: [] });
    expect(await store.listAside()).toStrictEqual([]);
  });

  it('is finished by the next start when the power failed on the way, at every step and byte', async () => {
    const stepsOfAll = 6;
    const size = toBytes(linesUpTo(2)).length;
    for (let failsAt = 0; failsAt < stepsOfAll; failsAt += 1) {
      for (const tornBytes of [0, 1, size - 1, size]) {
        const tablet = await makeFilledTablet(name, 2);
        const power = makePower(failsAt, tornBytes);
        const { store } = switchOn(tablet, power);
        await store.restore();
        const moved = await store.setAside(name, 'refused');
        const { logs } = await switchOn(tablet).store.restore();
        const about = `step ${failsAt}, ${tornBytes} bytes`;
        if (tablet.disk.aside.size === 0) expect(logs.get(name), about).toHaveLength(2);
        else {
          expect(logs.size, about).toBe(0);
          expect(await readAside(tablet), about).toStrictEqual(everything(2));
        }
        expect(tablet.disk.marks.size, about).toBe(0);
        if (failsAt === stepsOfAll - 1) expect(moved.ok, 'the last step lies beyond the way').toBe(true);
        else expect(moved.ok, about).toBe(false);
      }
    }
  });

  it('because the copies contradict each other is finished too, and neither counts on its own afterwards', async () => {
    for (let failsAt = 0; failsAt < 5; failsAt += 1) {
      const tablet = await makeFilledTablet(name, 2);
      await editIndex(tablet, (place) => place.put(encodeLine(1, '"other"'), writeKey(name, 1)));
      await switchOn(tablet, makePower(failsAt)).store.restore();
      expect((await switchOn(tablet).store.restore()).logs.size, `step ${failsAt}`).toBe(0);
      expect(await switchOn(tablet).store.listAside(), `step ${failsAt}`).toHaveLength(2);
    }
  });
});

describe('removing a log', () => {
  it('is finished by the next start when the power failed on the way, and never leaves half of it', async () => {
    const stepsOfAll = 4;
    for (let failsAt = 0; failsAt <= stepsOfAll; failsAt += 1) {
      const tablet = await makeFilledTablet(name, 3);
      const { store } = switchOn(tablet, makePower(failsAt));
      await store.restore();
      const removed = await store.remove(name);
      expect(removed.ok, `step ${failsAt}`).toBe(failsAt === stepsOfAll);
      const isBegun = tablet.disk.marks.size > 0 || removed.ok;
      if (isBegun && !removed.ok) await editIndex(tablet, (place) => place.delete(writeKey(name, 2)));
      const { logs } = await switchOn(tablet).store.restore();
      expect(logs.get(name)?.length ?? 0, `step ${failsAt}`).toBe(isBegun ? 0 : 3);
      expect(isBegun, `step ${failsAt}`).toBe(failsAt > 0);
      expect({ marks: tablet.disk.marks.size, aside: tablet.disk.aside.size }).toStrictEqual({
        marks: 0,
        aside: 0,
      });
    }
  });
});
