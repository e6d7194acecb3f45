import 'fake-indexeddb/auto';
import { IDBDatabase as FakeDatabase, forceCloseDatabase, IDBFactory } from 'fake-indexeddb';
import { get, set } from 'idb-keyval';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { finish, makeStrictStore } from '../../../src/storage/strictStore';

afterEach(() => {
  vi.restoreAllMocks();
});

describe('the strict place', () => {
  it('asks for strict durability in every transaction', async () => {
    const begun = vi.spyOn(FakeDatabase.prototype, 'transaction');
    const { use } = makeStrictStore(new IDBFactory(), 'tablet', 'lines');
    await get('a', use);
    begun.mockClear();
    await set('a', 1, use);
    expect(await get('a', use)).toBe(1);
    expect(begun.mock.calls).toStrictEqual([
      ['lines', 'readwrite', { durability: 'strict' }],
      ['lines', 'readonly', { durability: 'strict' }],
    ]);
    expect(begun.mock.results.map(({ value }) => (value as IDBTransaction).durability)).toStrictEqual([
      'strict',
      'strict',
    ]);
  });

  it('opens again after it was closed, by us or by the browser', async () => {
    const { use, close } = makeStrictStore(new IDBFactory(), 'tablet', 'lines');
    await set('a', 1, use);
    close();
    expect(await get('a', use)).toBe(1);
    await use('readonly', (place) =>
      forceCloseDatabase(place.transaction.db as unknown as Parameters<typeof forceCloseDatabase>[0]),
    );
    await get('a', use).catch(() => undefined);
    expect(await get('a', use)).toBe(1);
  });

  it('says so when the browser refuses to open, and tries again the next time', async () => {
    const factory = new IDBFactory();
    const open = vi.spyOn(factory, 'open').mockImplementationOnce(() => {
      throw new DOMException('not here', 'SecurityError');
    });
    const { use } = makeStrictStore(factory, 'tablet', 'lines');
    await expect(set('a', 1, use)).rejects.toThrow('not here');
    await set('a', 1, use);
    expect(open).toHaveBeenCalledTimes(2);
  });

  it('names what broke a transaction off', async () => {
    const { use } = makeStrictStore(new IDBFactory(), 'tablet', 'lines');
    await set('a', 1, use);
    const twice = use('readwrite', (place) => {
      const done = finish(place.transaction);
      place.add(2, 'a');
      return done;
    });
    await expect(twice).rejects.toMatchObject({ name: 'ConstraintError' });
    const given = use('readwrite', (place) => {
      const done = finish(place.transaction);
      place.transaction.abort();
      return done;
    });
    await expect(given).rejects.toMatchObject({ name: 'AbortError' });
  });
});
